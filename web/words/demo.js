// Words of the invented job of the try-out.

export const words = {
  offer: 'Fill in an invented job',
  ask: 'This job has been worked on. The invented numbers take the place of its limits, its names and what was typed into its sheets.',
  fill: 'Fill it in all the same',
  leave: 'Leave it as it is',
  invented:
    'Invented: limits, names and every number here stand for no heater and no vehicle. Facts are not ticked and no angle is captured.',
};
