// Words of "Five minutes": from first open to the printed record.

import { t } from '../language.js';

/**
 * @typedef {object} Step
 * @property {string} id its picture's name too
 * @property {string} title
 * @property {string[]} points
 * @property {string} alt what the picture shows
 */

export const words = {
  title: t`Five minutes`,
  lead: t`From first open to the printed record. The pictures show the try-out: a simulated phone, an invented vehicle.`,
  plusMinus: t`What ± means`,
  tryout: t`Try it now`,
  job: t`To the job`,
};

/** In the order of the work. @type {Step[]} */
export const steps = [
  {
    id: 'open',
    title: t`Open it once`,
    points: [
      t`Tap “Allow sensors”, answer the browser with yes. From then on it works without a network.`,
      t`No sensors at hand? “Try-out” has a simulated phone; “Tape and tables, no sensors” needs none.`,
    ],
    alt: t`First screen: what it does, cautions, at the bottom try-out and sensors.`,
  },
  {
    id: 'limits',
    title: t`Limits from the manual first`,
    points: [
      t`“Limits”, then “From the manual, step by step”. Name document and page.`,
      t`A verdict by trade usage is drawn with a double frame and never closes a job.`,
    ],
    alt: t`Step 2 of the limits: the document’s title, then the first free space with where manuals usually give it.`,
  },
  {
    id: 'hold',
    title: t`Hold it as drawn`,
    points: [
      t`Heater off and cold, engine off, vehicle chocked. Pick the part, then lay the phone on as on the picture.`,
      t`Then say which end looks lower: your eye finds what a phone held the wrong way round can’t.`,
    ],
    alt: t`Picture of the phone lying with its back on the heater, top edge towards the warm-air outlet.`,
  },
  {
    id: 'verdict',
    title: t`Read the word, not the number`,
    points: [
      t`within: the limit is kept, ± and all. Capture, go on.`,
      t`beyond: it is broken, ± and all. Move the part as the line below says, read again.`,
      t`not proven: it can be either. Turn the phone end for end, or move the part off the limit.`,
      t`No number: it moves, or something is amiss. The line says what.`,
    ],
    alt: t`Two checks of a heater: fuel port within, warm-air outlet beyond, each with drawing, value and ±; below, what to do.`,
  },
  {
    id: 'turn',
    title: t`Turn the phone end for end`,
    points: [
      t`Keep one placement, turn the phone by half on the same spot: its own error drops out and ± shrinks.`,
      t`Or check it once on a table under “This phone”: that counts for an hour in the same place.`,
    ],
    alt: t`The phone drawn on the heater with an arrow: turn it by half on the same spot.`,
  },
  {
    id: 'blind',
    title: t`Where you can’t see: blind reading`,
    points: [
      t`Arm it, place the phone, keep still, wait for the sound, take it away and read.`,
      t`One long: within. Two short: beyond. Three low: not proven.`,
    ],
    alt: t`Blind reading: armed, its steps, and the sounds.`,
  },
  {
    id: 'tape',
    title: t`The half with the tape`,
    points: [
      t`Place, ducts, fuel, exhaust, supply: type what tape, feeler gauge and voltmeter say. Answers come as you type.`,
      t`The button at the bottom left of the job lists what is not checked yet.`,
    ],
    alt: t`Place: fit and cut plan with their states, the heater’s box with the clearances round it.`,
  },
  {
    id: 'co',
    title: t`First start: carbon monoxide`,
    points: [
      t`Meter zeroed outdoors, vehicle outdoors, doors closed, nobody inside, meter read from outside.`,
      t`A rise: stop, get out, ventilate, find the cause. The best there is: no rise found by this meter, this time.`,
    ],
    alt: t`CO test: what comes before ignition, then the meter and its error.`,
  },
  {
    id: 'record',
    title: t`Hand over the record`,
    points: [
      t`It shows what was measured, how, by whose limits, and what was not checked. It is no approval.`,
      t`Sign, print it or make a PDF; JSON and table go along as files.`,
    ],
    alt: t`The record, further down: its checksum, what is beyond, the place to sign.`,
  },
];
