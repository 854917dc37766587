// Words of the fit: the heater in its compartment.

/** @param {string} by @param {boolean} more */
const room = (by, more) => (more ? `${by} more room on every side would prove it.` : `${by} less.`);

/** @type {Record<string, string | [string, string]>} */
const fields = {
  inner_x_mm: ['From left to right', 'inside, where it is narrowest'],
  inner_y_mm: ['From the door inwards', 'inside, where it is narrowest'],
  inner_z_mm: ['Upwards', 'inside, where it is lowest'],
  length_mm: ['From end to end', 'intake to warm-air outlet'],
  width_mm: ['Across', 'square to its fuel port'],
  height_mm: ['Along its fuel port', 'without hoses'],
  outlet_end_mm: 'Limit: beyond the warm-air end',
  intake_end_mm: 'Limit: before the intake end',
  top_mm: 'Limit: above, away from the fuel port',
  bottom_mm: 'Limit: below, on the side of the fuel port',
  left_mm: 'Limit: left, seen from the intake',
  right_mm: 'Limit: right, seen from the intake',
  orientation: 'Orientation looked at',
  x_mm: ['Starts, from the left wall', '0 where it touches the wall'],
  y_mm: 'Starts, from the door',
  z_mm: 'Starts, from the floor',
  size_x_mm: 'Size, from left to right',
  size_y_mm: 'Size, inwards',
  size_z_mm: 'Size, upwards',
};

const LAYS = {
  room_xy_mm: 'Lying left to right, on its side',
  room_xz_mm: 'Lying left to right, upright',
  room_yx_mm: 'Lying inwards, on its side',
  room_yz_mm: 'Lying inwards, upright',
  room_zx_mm: 'Standing on end, top to the side',
  room_zy_mm: 'Standing on end, top inwards or outwards',
};

export const words = {
  title: 'Fit',
  lead: 'Which way round the heater finds room with its free spaces, and how much is left.',
  inner: 'Compartment, inside',
  innerWhy: 'As you look in through its door.',
  outer: 'Heater',
  clear: 'Free spaces, from the limits',
  clearWhy:
    'They turn with the heater. Only the limits set them, so that the manual’s word counts.',
  toLimits: 'Enter them in the limits',
  notEntered: 'not entered',
  boxes: 'Things in the way',
  boxesWhy:
    'Each as a box round it: wheel arch, pipe, step. Their own room is not for hoses either.',
  ways: 'Ways round',
  waysWhy:
    'Room is what is left on every side beyond the free spaces, at the best place. Hoses, ducts and your hands need more.',
  /** @type {Record<string, string>} */
  lays: LAYS,
  allowed: 'allowed',
  portUp: 'not this way: fuel port up',
  outletUp: 'not this way: outlet up',
  /** @param {string} outlet @param {string} port */
  way: (outlet, port) => `outlet ${outlet}, port ${port}`,
  /** By axis and sign. @type {Record<string, string>} */
  towards: {
    '0+': 'right',
    '0-': 'left',
    '1+': 'inwards',
    '1-': 'to the door',
    '2+': 'up',
    '2-': 'down',
  },
  best: 'most room of those allowed',
  chosen: 'This way round',
  choose: 'Tap a way round to see its place.',
  picture: {
    label: 'The heater at its best place in the compartment',
    note: 'to scale; arrow: warm air, stub: fuel port',
  },
  /** @param {string} x @param {string} y @param {string} z */
  at: (x, y, z) => `Best place: ${x} from the left wall, ${y} from the door, ${z} above the floor.`,
  /** @param {string} x @param {string} y @param {string} z */
  spare: (x, y, z) => `It could be shifted by ${x} sideways, ${y} inwards, ${z} upwards in all.`,
  lacking: 'It lacks room: what is drawn overlaps.',
  again: 'Once it hangs there, measure its free spaces: those count.',
  fit: {
    fields,
    results: {
      ...LAYS,
      best: 'Most room of those allowed',
      room_mm: 'Room on every side, this way round',
      spare_x_mm: 'Could be shifted sideways by',
      spare_y_mm: 'Could be shifted inwards by',
      spare_z_mm: 'Could be shifted upwards by',
      at_x_mm: 'Best place from the left wall',
      at_y_mm: 'Best place from the door',
      at_z_mm: 'Best place above the floor',
      extent_x_mm: 'Takes up from left to right',
      extent_y_mm: 'Takes up inwards',
      extent_z_mm: 'Takes up upwards',
    },
    how: {
      room_mm: 'half of the least that is left along the three axes, in the roomiest empty box',
      spare_x_mm: 'empty box less heater and free spaces',
    },
    change: { spare_room_mm: room },
    /** @param {number} n */
    row: (n) => `Thing ${n}`,
    addRow: 'Add a thing in the way',
  },
};
