// Words of units, language and keeping.

import { t } from '../language.js';

export const words = {
  title: t`Units, language`,
  language: t`Language`,
  /** @param {string} name */
  loadAnew: (name) => t`Load the page anew in: ${name}`,
  notChosen: t`This browser keeps no choice of language for this page: it follows the browser’s own.`,
  angle: t`Angles`,
  units: { deg: t`degrees`, percent: t`percent`, mm_m: t`mm per metre` },
  system: t`Lengths`,
  systems: { metric: t`millimetres`, us: t`inches` },
  hand: t`Hand that holds the phone and taps`,
  hands: { right: t`right`, left: t`left` },
  sign: t`Learn this phone’s sensor sign again`,
  kept: {
    yes: t`The browser has promised to keep what is saved.`,
    no: t`The browser may throw away what is saved when space is short. Copy out what matters.`,
    unknown: t`Whether the browser keeps what is saved is not known.`,
  },
  done: t`Done`,
};
