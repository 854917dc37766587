// Words of the fit: the heater in its compartment.

import { t } from '../language.js';

/** @param {string} by @param {boolean} more */
const room = (by, more) =>
  more ? t`${by} more room on every side would prove it.` : t`${by} less.`;

/** @type {Record<string, string | [string, string]>} */
const fields = {
  inner_x_mm: [t`From left to right`, t`inside, where it is narrowest`],
  inner_y_mm: [t`From the door inwards`, t`inside, where it is narrowest`],
  inner_z_mm: [t`Upwards`, t`inside, where it is lowest`],
  length_mm: [t`From end to end`, t`intake to warm-air outlet`],
  width_mm: [t`Across`, t`square to its fuel port`],
  height_mm: [t`Along its fuel port`, t`without hoses`],
  outlet_end_mm: t`Limit: beyond the warm-air end`,
  intake_end_mm: t`Limit: before the intake end`,
  top_mm: t`Limit: above, away from the fuel port`,
  bottom_mm: t`Limit: below, on the side of the fuel port`,
  left_mm: t`Limit: left, seen from the intake`,
  right_mm: t`Limit: right, seen from the intake`,
  orientation: t`Orientation looked at`,
  x_mm: [t`Starts, from the left wall`, t`0 where it touches the wall`],
  y_mm: t`Starts, from the door`,
  z_mm: t`Starts, from the floor`,
  size_x_mm: t`Size, from left to right`,
  size_y_mm: t`Size, inwards`,
  size_z_mm: t`Size, upwards`,
};

const LAYS = {
  room_xy_mm: t`Lying left to right, on its side`,
  room_xz_mm: t`Lying left to right, upright`,
  room_yx_mm: t`Lying inwards, on its side`,
  room_yz_mm: t`Lying inwards, upright`,
  room_zx_mm: t`Standing on end, top to the side`,
  room_zy_mm: t`Standing on end, top inwards or outwards`,
};

export const words = {
  title: t`Fit`,
  lead: t`Which way round the heater finds room with its free spaces, and how much is left.`,
  inner: t`Compartment, inside`,
  innerWhy: t`As you look in through its door.`,
  outer: t`Heater`,
  clear: t`Free spaces, from the limits`,
  clearWhy: t`They turn with the heater. Only the limits set them, so that the manual’s word counts.`,
  toLimits: t`To the limits`,
  notEntered: t`not entered`,
  boxes: t`Things in the way`,
  boxesWhy: t`Each as a box round it: wheel arch, pipe, step.`,
  ways: t`Ways round`,
  waysWhy: t`Room is what is left on every side beyond the free spaces, at the best place. Hoses, ducts and your hands need more. Only ways with port or outlet up are ruled out here: whether the manual permits the others, see there before you cut.`,
  /** @type {Record<string, string>} */
  lays: LAYS,
  portUp: t`not this way: fuel port up`,
  outletUp: t`not this way: outlet up`,
  /** @param {string} outlet @param {string} port */
  way: (outlet, port) => t`outlet ${outlet}, port ${port}`,
  /** By axis and sign. @type {Record<string, string>} */
  towards: {
    '0+': t`right`,
    '0-': t`left`,
    '1+': t`inwards`,
    '1-': t`to the door`,
    '2+': t`up`,
    '2-': t`down`,
  },
  best: t`most room; port and outlet not up`,
  chosen: t`This way round`,
  choose: t`Tap a way round to see its place.`,
  picture: {
    label: t`The heater at its best place in the compartment`,
    note: t`to scale; arrow: warm air, stub: fuel port`,
  },
  /** @param {string} x @param {string} y @param {string} z */
  at: (x, y, z) =>
    t`Best place: ${x} from the left wall, ${y} from the door, ${z} above the floor.`,
  /** @param {string} x @param {string} y @param {string} z */
  spare: (x, y, z) => t`It could be shifted by ${x} sideways, ${y} inwards, ${z} upwards in all.`,
  lacking: t`It lacks room: what is drawn overlaps.`,
  again: t`Once it hangs there, measure its free spaces: those count.`,
  fit: {
    fields,
    results: {
      ...LAYS,
      best: t`Most room; port and outlet not up`,
      room_mm: t`Room on every side, this way round`,
      spare_x_mm: t`Could be shifted sideways by`,
      spare_y_mm: t`Could be shifted inwards by`,
      spare_z_mm: t`Could be shifted upwards by`,
      at_x_mm: t`Best place from the left wall`,
      at_y_mm: t`Best place from the door`,
      at_z_mm: t`Best place above the floor`,
      extent_x_mm: t`Takes up from left to right`,
      extent_y_mm: t`Takes up inwards`,
      extent_z_mm: t`Takes up upwards`,
    },
    how: {
      room_mm: t`half of the least that is left along the three axes, in the roomiest empty box`,
      spare_x_mm: t`empty box less heater and free spaces`,
    },
    change: { spare_room_mm: room },
    /** @param {number} n */
    row: (n) => t`Thing ${n}`,
    addRow: t`Add a thing in the way`,
  },
};
