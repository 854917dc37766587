// Words of the invented job of the try-out.

export const words = {
  offer: 'Fill in an invented job',
  ask: 'This job has been worked on. The invented numbers take the place of its limits, its names and what was typed into its sheets.',
  fill: 'Fill it in all the same',
  leave: 'Leave it as it is',
  invented:
    'Invented job: its limits, names and numbers stand for no heater and no vehicle. Facts and angles are left open.',
};
