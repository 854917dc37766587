// Every word that a person reads. One catalogue; another language is another file of this shape.
// Installers' words: short, what to do first. Nothing here says that a thing is fit for use.

import { clock } from './units.js';

/** @param {number} n @param {string} one @param {string} many */
const count = (n, one, many) => `${n} ${n === 1 ? one : many}`;

/** When something found or read at `ms` stops counting, for people: core keeps the hour itself.
 * @param {number} ms */
const until = (ms) => `counts until ${clock(ms + 3_600_000)}`;

export const text = {
  name: 'Plumbmark',
  start: {
    lead: 'Hold the phone to the mounted part, or type what the tape tells. It says within, beyond or not proven, and what to do about it.',
    allow: 'Allow sensors',
    tryout: 'Try-out, no sensors',
    tape: 'Tape and tables, no sensors',
    captures: 'Captures',
    jobs: 'Jobs',
    limits: 'Limits',
    settings: 'Units',
    first: 'First',
    cautions: [
      'The heater’s manual, local codes and licensed practice come first.',
      'Engine off and cold. Vehicle chocked. Never under a cab or an air-sprung body without stands.',
      'No phone on a pipe that has run: burns.',
    ],
    version: 'Version',
  },
  sensors: {
    denied:
      'The browser refused the sensors. Chrome: tap the sign left of the address, then Permissions, and allow motion sensors. Safari: close this tab, open it again and answer “Allow”; in Settings, Apps, Safari, clear this page’s data if it does not ask. Then tap again.',
    insecure:
      'This address gets no sensors: browsers give them to https pages and to localhost only. Open the page by https, or reach the computer as localhost over the cable.',
    unsupported: 'This browser has no motion sensors for pages. Use another one, or the try-out.',
    asking: 'Asking the browser …',
  },
  parts: {
    title: 'Job',
    heater: 'Heater',
    pump: 'Metering pump',
    filter: 'Filter',
    pipe: 'Exhaust or air pipe',
    sub: {
      heater: 'fuel port, warm-air outlet',
      pump: 'outlet end, roll',
      filter: 'upright, arrow with the flow',
      pipe: 'falls away from the heater',
    },
    unchecked: 'not checked',
    /** @param {number} n */
    open: (n) => `${n} not checked`,
    all: 'All captures',
    jobs: 'All jobs',
    record: 'Record',
    mayGo:
      'This browser may throw saved jobs away when space is short: hand the record out when you leave.',
    again: 'Checked again',
    /** The order of the work. @type {Record<string, string>} */
    groups: {
      first: 'Before the first cut',
      seat: 'Set and seal',
      air: 'Warm air',
      fuel: 'Fuel',
      flue: 'Exhaust and combustion air',
      supply: 'Supply',
      start: 'First start',
    },
    limits: 'Limits',
    /** @param {number} n @param {number} of */
    entered: (n, of) => `${n} of ${of} from the manual`,
    path: { whole: 'Whole job', angles: 'Angles only' },
    pathLegend: 'How much of it',
    anglesOnly: 'The rest of the job is not looked at here.',
    notNeeded: 'not needed',
    seen: 'seen',
    notFound: 'nothing found',
    /** @param {string} what */
    next: (what) => `Next: ${what}`,
    nothingNext: 'Nothing left to do here',
    /** @param {{ open: number, beyond: number, not_proven: number, within: number, usage: number,
     *   not_found: number, seen: number, not_needed: number }} n */
    summary: (n) => {
      const open = n.open ? `${n.open} not checked` : 'nothing unchecked';
      const usage = n.usage ? `, ${n.usage} of them only trade usage` : '';
      // Nothing beyond says nothing while nothing was looked at.
      const answered = n.beyond + n.not_proven + n.within > 0;
      return [
        answered && (n.beyond ? `${n.beyond} beyond` : 'nothing beyond'),
        answered && (n.not_proven ? `${n.not_proven} not proven` : 'nothing unproven'),
        open,
        n.within && `${n.within} within${usage}`,
        n.not_found && `${n.not_found} looked for and not found`,
        n.seen && `${n.seen} seen`,
        n.not_needed && `${n.not_needed} not needed`,
      ]
        .filter(Boolean)
        .join(', ');
    },
  },
  /** Sections of the tape-measure half: name, and what it is about. */
  sections: {
    job: ['First questions', 'manual, approval, dangerous goods'],
    demand: ['Heat wanted', 'loss, heater, warming up, a night'],
    place: ['Place', 'clearances, cut plan, fit'],
    support: ['Support', 'evenness under the seal, plate, seal'],
    ducts: ['Ducts', 'bends, loss, air flow, return air'],
    fuel: ['Fuel', 'line, lift, prime, standpipe'],
    flue: ['Exhaust and combustion air', 'legs, low points, ends'],
    supply: ['Supply', 'cable, fuse, battery bank, hours'],
    start_up: ['First start', 'carbon monoxide, leaks, values, driver'],
  },
  photos: {
    take: 'Take a photo',
    of: 'photo of this check',
    failed: 'That picture could not be read. Take it again.',
  },
  checks: {
    heater_port: 'Fuel port',
    heater_outlet: 'Warm-air outlet',
    pump_outlet: 'Pump outlet',
    pump_roll: 'Pump roll',
    filter_upright: 'Filter, off upright',
    pipe_fall: 'Pipe leg',
  },
  axis: {
    heater_port: 'elevation of the port',
    heater_outlet: 'elevation of the outlet',
    pump_outlet: 'elevation of the outlet end',
    pump_roll: 'turn about its length',
    filter_upright: 'arrow off straight up',
    pipe_fall: 'elevation away from the heater',
  },
  holds: {
    back: 'Back of the phone',
    long_edge: 'Long edge',
    short_edge: 'Short edge',
  },
  surfaces: {
    metal_face: 'on a metal face',
    sheet: 'on sheet or cover',
    round_body: 'along the round body',
    bracket: 'on the bracket’s flat',
    bar: 'on a straight bar along it',
  },
  hold: {
    title: 'How to hold it',
    how: {
      back: 'Screen away from the part, top edge towards the',
      long_edge: 'Right long edge on the part, top edge towards the',
      short_edge: 'Bottom edge on the part, right side towards the',
    },
    gives: 'gives',
    next: 'Hold it like this',
    other: 'Other ways',
    topEdge: 'top edge',
    refusedTitle: 'Ways that give nothing',
    no_roll: 'roll: not from this hold',
  },
  refusals: {
    no_such_surface: 'this part has no such surface',
    edge_on_bracket: 'the flat is too short for an edge: use the back',
    edge_too_short: 'the short edge covers too little: use the long one',
  },
  cautions: {
    heater: 'Heater off and cold. Take the phone from a face that blew hot air.',
    pump: 'Keep flames and sparks away from fuel lines. Catch what drips.',
    filter: 'Keep flames and sparks away from fuel lines. Catch what drips.',
    pipe: 'Never on a pipe that has run: it burns, and heat spoils the phone.',
  },
  headEnd: {
    heater: 'warm-air outlet',
    pump: 'pump outlet (heater end)',
    filter: 'end that the arrow points to',
    pipe: 'end away from the heater',
  },
  ends: {
    title: 'Which end is lower?',
    questions: {
      heater_port: 'Fuel port or the face opposite: which is lower?',
      heater_outlet: 'Which end of the heater is lower?',
      pump_outlet: 'Which end of the pump is lower?',
      filter_upright: 'Which end of the filter is lower?',
      pipe_fall: 'Which end of the pipe leg is lower?',
    },
    tail: {
      heater_port: 'Face opposite the port',
      heater_outlet: 'Intake end',
      pump_outlet: 'Tank end',
      filter_upright: 'End the arrow comes from',
      pipe_fall: 'Heater end',
    },
    head: {
      heater_port: 'Fuel port',
      heater_outlet: 'Warm-air outlet',
      pump_outlet: 'Outlet, heater end',
      filter_upright: 'End the arrow points to',
      pipe_fall: 'Far end',
    },
    cant: 'Can’t tell',
    why: 'A phone held the wrong way round reads the same slope with the wrong end up. Your eye settles that; the phone does the degrees.',
    photoWhy:
      'Take a photo of the phone on the part: the arrow below on the screen, the part’s flow mark beside it. Without it the reading is kept and no verdict is given.',
    photo: 'Take the photo',
    without: 'Go on without it',
    arrow: 'towards the',
  },
  live: {
    capture: 'Capture',
    waiting: 'Waiting …',
    blind: 'Blind reading',
    trapped: 'no reading',
    level: 'level',
    up: 'up',
    unchecked: 'Phone not yet checked',
    /** @param {string} time */
    checked: (time) => `Phone checked ${time}`,
    turned: 'Turned end for end',
    turn: 'Turn end for end',
    cancelTurn: 'Cancel turn',
    turnHow: 'Both placements together make the reading.',
    /** @param {string} margin */
    within: (margin) => `${margin} left after the uncertainty.`,
    /** @param {string} what */
    settle: (what) => `Mostly ${what}.`,
    beyondHow: 'Then read again.',
    tooNarrow: 'These limits lie closer together than this reading can tell. Use a better gauge.',
    enterLimit: 'Enter the limit from the heater’s manual, under Limits.',
    enterAllowance: 'Position allowed; the manual’s allowance has not been entered.',
    preferred: 'Better still:',
    preferredReached: 'In the preferred band.',
    checkEnds: 'Eye and reading name different ends. Turn it the right way round, or look again.',
    endNotTold: 'Nobody said which end is lower: the reading is kept without a verdict.',
    rollUndefined: 'So near plumb there is no roll. Read it on a flat that lies less steep.',
    /** @param {string} angle @param {string | null} rise @param {string} over */
    raise: (angle, rise, over) =>
      rise ? `Raise the %s by ${angle}: ${rise} over ${over}.` : `Raise the %s by ${angle}.`,
    /** @param {string} angle @param {string | null} rise @param {string} over */
    lower: (angle, rise, over) =>
      rise ? `Lower the %s by ${angle}: ${rise} over ${over}.` : `Lower the %s by ${angle}.`,
    /** @param {string} angle */
    upright: (angle) => `Turn it ${angle} towards upright.`,
    /** @param {string} angle */
    fromUpright: (angle) => `Turn it ${angle} away from upright.`,
    /** @param {string} angle @param {boolean} right */
    roll: (angle, right) =>
      `Turn it ${angle} ${right ? 'clockwise' : 'anticlockwise'}, seen from its tail end.`,
  },
  moves: {
    heater_port: 'fuel port',
    heater_outlet: 'outlet end',
    pump_outlet: 'outlet end',
    filter_upright: 'arrow’s end',
    pipe_fall: 'far end',
  },
  verdicts: { within: 'within', beyond: 'beyond', not_proven: 'not proven', none: 'no verdict' },
  whys: {
    limit_not_entered: 'limit not entered',
    allowance_not_entered: 'position allowed; allowance not entered',
    ends_disagree: 'eye and reading disagree',
    end_not_told: 'lower end not told',
    roll_undefined: 'no roll so near plumb',
  },
  bases: {
    manual: 'manual',
    law: 'law',
    trade_usage: 'trade usage',
    assumed: 'assumed',
  },
  basisLine: {
    /** @param {string} source */
    manual: (source) => `Limit from the manual: ${source}.`,
    /** @param {string} source */
    law: (source) => `Limit from law: ${source}.`,
    /** @param {string} source */
    trade_usage: (source) => `Limit: ${source || 'trade usage'}.`,
    /** @param {string} source */
    assumed: (source) => `Limit: ${source || 'assumed'}.`,
  },
  /** Verdicts against a number that is not the manual's, in words. */
  againstUsage: {
    trade_usage: 'trade usage: manual not entered',
    assumed: 'an assumed limit: manual not entered',
  },
  sources: {
    noise: 'noise of the samples',
    step: 'step of the readings',
    settle: 'settling of the phone',
    zero: 'the sensor’s own zero',
    scale: 'scale of the sensor',
    hold: 'how it lies on the part',
    align: 'edge against the part’s axis',
    datum: 'reading of the vehicle’s level',
    heading: 'which way the part points',
    rake: 'load and springs of the vehicle',
  },
  reasons: {
    starting: ['starting', 'Listening to the sensors.'],
    filling: ['keep it still', 'One second of rest makes a reading.'],
    no_sensor: [
      'no sensor',
      'The browser sends no motion values. Check the permission, or use another phone.',
    ],
    values_missing: [
      'sensor failing',
      'Parts of the sensor’s values are missing. Restart the browser.',
    ],
    not_finite: [
      'sensor failing',
      'The sensor sent something that is no number. Restart the browser.',
    ],
    time_repeated: ['clock fault', 'Two events carry the same time. Wait, or restart the browser.'],
    time_backward: ['clock fault', 'The events’ time ran backward. Wait, or restart the browser.'],
    gap: ['interrupted', 'Events stopped for a moment. Keep it still.'],
    stale: [
      'sensor silent',
      'No event for a while. Keep this page in front; if it stays, start again.',
    ],
    not_gravity: ['knocked', 'That was not gravity alone. Keep it still.'],
    moving: ['keep it still', 'It moves. No number is shown until it rests.'],
    tremor: ['trembling', 'A hand or an engine shakes it. Rest it on the part; engine off.'],
    drifting: ['settling', 'It still moves slowly, or the phone has not settled. Keep it still.'],
    settling: ['settling', 'This phone needs three seconds of rest.'],
    channels_disagree: [
      'settling',
      'The phone’s two sensors say different things. Keep it still; if this stays, do not use this phone.',
    ],
    sign_unknown: ['one question', 'Lay the phone face up on anything flat and tap below.'],
    sign_flipped: ['sensor turned', 'The sensor changed its sign. Tap below to learn it again.'],
    not_turned: ['turn it', 'Turn the phone end for end on the same spot, then keep it still.'],
    turn_too_old: [
      'too long ago',
      'More than three minutes since the first placement. Cancel, and start the turn again.',
    ],
    turn_disagrees: [
      'does not fit',
      'The two placements do not fit together: it rocks, was tipped, or the part moved. Cancel, and start the turn again.',
    ],
    trapped: ['no reading', 'The calculation stopped and is being started anew.'],
  },
  faceUp: {
    button: 'It lies face up',
    again: 'Not flat or not still yet. Lay it face up and tap again.',
  },
  learnAgain: 'Learn it again',
  blind: {
    title: 'Blind reading',
    armed: 'Armed. Place the phone.',
    moved: 'Placed. Keep it still.',
    steps: [
      ['Hold it to the part', 'as on the picture before'],
      ['Keep it still', 'about two seconds'],
      ['Wait for the sound', 'it is captured by itself'],
      ['Take it away and read', 'the capture stays, with its time'],
    ],
    stop: 'Stop',
    hear: 'Hear them',
    sounds: {
      within: 'one long',
      beyond: 'two short',
      not_proven: 'three low',
      none: 'four quick',
    },
  },
  captured: {
    title: 'Captured',
    /** @param {string} time */
    at: (time) => `captured ${time}`,
    saving: 'saving …',
    saved: 'saved',
    /** @param {string} part */
    next: (part) => `Next: ${part}`,
    again: 'Read again',
    done: 'To the parts',
    where: 'Where ± comes from',
    blind: 'blind reading',
    photo: 'with photo',
    tryout: 'try-out, no measurement',
  },
  storeErrors: {
    blocked:
      'Not saved: this browser lets the page keep nothing (private window, or storage switched off). Copy out what is here, and open the page in a normal window.',
    full: 'Not saved: the storage is full. Free some space on the phone, then try again; copy out meanwhile.',
    failed: 'Not saved: the browser could not write it. Try again; copy out meanwhile.',
    wrong_store: 'Not saved: a try-out capture can’t enter a real job.',
    older_tab:
      'Not saved: another tab holds an earlier version of this page. Close it, then try again; copy out meanwhile.',
    newer:
      'Not saved: the storage is of a newer version of this page. Copy out what is here, then load the page anew.',
    evicted:
      'Not saved: the browser threw its storage away or closed it. What is here is still in memory: try again, or copy it out before you close the page.',
    gone: 'Not saved: this job was removed for good in another tab. Copy it out, or try again to make a new job of it.',
    unloaded:
      'A part of this page is missing: another tab put a newer version in force, or the browser threw it away. Load it anew.',
    elsewhere:
      'This job is open in another tab: one tab writes to it at a time. Close the other one, or go on here.',
  },
  /** Ways out. */
  notKept: {
    copyOut: 'Copy out what is here',
    tryAgain: 'Try again',
    reload: 'Load anew',
    useHere: 'Go on here',
  },
  details: {
    title: 'Where ± comes from',
    standard:
      'Standard uncertainties. They add as squares: two equal ones make 1.4 times one, not twice.',
    /** @param {string} time */
    level: (time) => `vehicle level read ${time}`,
    /** @param {string} k */
    k: (k) => `times k = ${k} for 95 %`,
    samples: (/** @type {number} */ n, /** @type {string} */ rate) =>
      `${count(n, 'sample', 'samples')}, ${rate} a second`,
    channel: { acceleration: 'from acceleration', orientation: 'from the fused orientation alone' },
    /** @param {string} step */
    step: (step) => `step of the readings ${step} m/s²`,
    probability: (/** @type {string} */ p) => `probability of conformance ${p}, for the record`,
    endTold: 'lower end by eye',
    endWords: { tail: 'tail', head: 'head', cant_tell: 'could not tell', photo: 'by photo' },
    fallback: 'Angles this steep are shown in degrees.',
    back: 'Back',
    no_claim: 'This shows what was measured, how, and against whose limits. It is no approval.',
  },
  overruled: {
    why: 'Taken on the wrong part, or slipped? It stays in the record, but does not count.',
    ask: 'This capture does not count',
    who: 'Your name',
    reason: 'Why it does not count',
    needed: 'Enter your name and why.',
    set: 'Keep it, but do not count it',
    takeBack: 'It counts after all',
    /** @param {string} who @param {string} time @param {string} reason */
    told: (who, time, reason) => `Does not count: ${who}, ${time}: ${reason}`,
    short: 'does not count',
  },
  captures: {
    title: 'Captures',
    empty: 'Nothing captured yet.',
    go: 'To the parts',
    gauge: 'Take in a gauge’s captures',
  },
  /** Of a capture that a gauge took. */
  gauge: {
    /** @param {import('./types.js').Gauge} of */
    by: ({ number, count, software }) =>
      `By gauge ${number}, its capture ${count}, software ${software}`,
    /** It has no clock. @param {string} time */
    at: (time) => `taken in ${time}`,
    zero: {
      assumed: 'Gauge not calibrated',
      found: 'Gauge calibrated',
      turn: 'Gauge turned end for end',
    },
    holds: { back: 'Back of the gauge', long_edge: 'Long edge', short_edge: 'Short edge' },
  },
  phone: {
    title: 'This phone',
    why: 'Every phone reads a little wrong. One minute on a table finds by how much, and ± gets smaller.',
    case: 'The phone is',
    inCase: 'in its case',
    bare: 'bare',
    side: 'Side that lies on the part',
    unchecked: 'not yet checked',
    /** @param {number} ms */
    checked: (ms) => `checked ${clock(ms)}, ${until(ms)} in the same place`,
    /** @param {string} time */
    over: (time) => `checked ${time}: over an hour ago, counts no more`,
    place: 'Warmth moves the zero: check again after an hour, and where it is warmer or colder.',
    turn: 'One-minute turn',
    poses: 'Any pose',
  },
  turn: {
    title: 'Turn',
    edge: 'the phone along a straight edge on a table',
    /** @param {number} n @param {number} of */
    count: (n, of) => `${n} of ${of}.`,
    lay: 'Lay it on a firm table as drawn, long side along a straight edge.',
    half: 'Turn it end for end on the same spot, along the same edge.',
    quarter: 'Turn it by a quarter on the same spot, against the same edge.',
    keep: 'Keep',
    turned: 'It is turned',
    four: 'Four quarters: better',
    two: 'Two placements',
    over: 'Start over',
    again: 'Once more',
    done: 'Done',
    found: 'This phone reads',
    high: 'too high',
    low: 'too low',
    lengthwise: 'lengthwise',
    crosswise: 'crosswise',
    /** @param {number} ms */
    takenOff: (ms) => `Taken off from now on; ${until(ms)} in the same place.`,
    errors: {
      not_turned: 'It was not turned. Turn it as drawn, keep it still, then tap Keep.',
      turn_too_old: 'More than three minutes between two placements. Start over, a little quicker.',
      tipped:
        'The placements do not fit together: it rocked or was tipped. Wipe table and phone, start over.',
      zero_too_large:
        'That would be more than any sensor is wrong by. Was the table moved, or the phone put on something? Start over.',
      pairs_disagree:
        'The two pairs find different things. Use a firmer table, keep to the same spot, start over.',
      not_opposite:
        'Two placements were not end for end. Turn as drawn, along the same edge; start over.',
      wrong_count: 'A placement is missing. Start over.',
    },
  },
  poses: {
    title: 'Any pose',
    why: 'Lean the phone in nine or more different ways and keep each. This finds its zero for every side at once.',
    /** @param {number} n */
    count: (n) => `${count(n, 'pose', 'poses')} kept`,
    keep: 'Keep this pose',
    over: 'Start over',
    both: 'Calibrated, for both of the phone’s sensors. It counts for an hour in the same place; more poses make it better.',
    one: 'Calibrated, for acceleration only: in too few poses did the phone’s two sensors agree. Keep more, each after three seconds of rest.',
    ways: [
      'face up, and face down',
      'on its left long edge, and on its right one',
      'on its bottom edge, and on its top edge',
      'leaning between these, against a box or a wall',
    ],
    refusals: {
      too_few_poses: 'At least nine are needed.',
      pose_taken: 'Too near to a pose that is kept. Lean it another way.',
      full: 'No room for more poses. Start over if it does not fit.',
      one_sided: 'One side never looked both up and down. Go through the list below.',
      singular: 'The poses are too much alike. Lean it in other ways.',
      no_convergence: 'The poses fit no sensor. Start over; keep it quite still each time.',
      too_large: 'That would be more than any sensor is wrong by. Start over.',
      does_not_fit: 'The poses contradict each other: one was not at rest. Start over.',
    },
  },
  level: {
    title: 'Vehicle level',
    how: 'Lay the phone on the rail or floor that the part is bolted to, top edge the way it points on the part.',
    where: 'It lies on',
    surfaces: { metal_face: 'the rail', sheet: 'the cab floor' },
    lengthwise: 'lengthwise',
    crosswise: 'crosswise',
    keep: 'Keep as level',
    again: 'Read again',
    done: 'Done',
    forget: 'Forget it',
    terms: 'About the vehicle',
    unread: 'not read',
    /** @param {number} ms */
    read: (ms) => `read ${clock(ms)}, ${until(ms)} if it stands still`,
    /** @param {string} time */
    over: (time) => `read ${time}: over an hour ago, read it again`,
    asBefore: 'The vehicle stands as before.',
    /** @param {string} time */
    moved: (time) =>
      `The vehicle has moved since ${time}: answers in the vehicle taken since then no longer count.`,
    movedSince: 'the vehicle moved after this: its answer no longer counts',
    inVehicle: 'in the vehicle',
    /** @param {string} angle */
    takes: (angle) => `slope takes ${angle} of margin`,
    takesAll: 'slope can take all of the margin',
    points: 'Against the phone on the rail, the part points',
    pointings: {
      same: 'the same way',
      left: 'to the left',
      opposite: 'the opposite way',
      right: 'to the right',
    },
  },
  levelRefusals: {
    stale: 'vehicle level is over an hour old: read it again',
    no_heading: 'so near plumb there is no heading: use another face',
    too_steep: 'Too steep for a rail or a floor: lay the phone flat, screen up.',
  },
  vehicle: {
    title: 'About the vehicle',
    working: 'Slope it works on',
    workingWhy: 'Steepest slope the heater runs on; 0 where nothing is known.',
    lean: 'Lean on known level ground',
    leanWhy:
      'How the rail or floor leans when the vehicle stands level. Assumed 0, to 1°, until it is read.',
    heading: 'Direction of the part',
    headingWhy: 'How well the part’s direction against the phone on the rail is known: by eye 5.',
    fields: {
      heading_deg: 'standard uncertainty',
      lean_lengthwise_deg: 'lengthwise, head end up',
      lean_crosswise_deg: 'crosswise, left side up',
      rake_deg: 'standard uncertainty',
      working_lengthwise_deg: 'lengthwise',
      working_crosswise_deg: 'crosswise',
    },
    wrong: {
      heading_deg: 'Enter 1 to 45.',
      lean_lengthwise_deg: 'Enter −15 to 15.',
      lean_crosswise_deg: 'Enter −15 to 15.',
      rake_deg: 'Enter 0.1 to 10.',
      working_lengthwise_deg: 'Enter 0 to 45.',
      working_crosswise_deg: 'Enter 0 to 45.',
    },
    readHere: 'Read it here: this ground is known to be level',
    readDone: 'Put into the fields. Look it through, then save.',
    save: 'Save',
    saved: 'saved',
    unsaved: 'not saved yet',
    notANumber: 'Enter a number, such as 2 or 2.5.',
    wrongField: 'See the field that is marked.',
  },
  settings: {
    title: 'Units',
    angle: 'Angles',
    units: { deg: 'degrees', percent: 'percent', mm_m: 'mm per metre' },
    system: 'Lengths',
    systems: { metric: 'millimetres', us: 'inches' },
    sign: 'Learn this phone’s sensor sign again',
    kept: {
      yes: 'The browser has promised to keep what is saved.',
      no: 'The browser may throw away what is saved when space is short. Copy out what matters.',
      unknown: 'Whether the browser keeps what is saved is not known.',
    },
    done: 'Done',
  },
  update: { ready: 'A new version is ready.', apply: 'Use it now' },
  back: 'Back',
  tryout: {
    band: 'Try-out: a simulated phone. Nothing here is a measurement.',
    up: 'Raise',
    down: 'Lower',
    rollLeft: 'Roll −',
    rollRight: 'Roll +',
    knock: 'Knock',
    turn: 'Other end up',
    end: 'End for end',
    quarter: 'By a quarter',
    table: 'To the table',
    rail: 'To the rail',
    part: 'To the part',
    trace: 'Play a recording',
    tracePlaying: 'Playing a recording …',
    leave: 'Leave',
    badTrace:
      'That file is no recording of the kind described in the guide: it needs t_ms, ax, ay, az.',
  },
  limits: {
    /** @type {Record<string, (low: number, high: number) => string>} */
    problems: {
      out_of_range: (low, high) => `enter a number from ${low} to ${high}`,
      hold_out_of_range: () => 'enter a number from 0.02 to 5',
      not_above_low: () => 'the upper end must lie above the lower end',
      roll_needs_both: () => 'a limit on roll needs both ends',
      outside_permitted: () => 'the preferred band must lie inside the permitted one',
      allowance_needs_manual: () =>
        'an allowance comes from the manual or a law, for a part that may sit at its limit',
      source_missing: () => 'name the document and page, or the clause',
      repeated: () => 'there are two of it; keep one',
      too_long: (_, most) => `shorten it to ${most} letters`,
      not_a_limit_set: () => 'this is not a limit set',
      other_version: () => 'this limit set was written by another version',
    },
    title: 'Limits',
    guide: 'Fill them from the manual, step by step',
    name: 'Name of this set',
    low: 'at least',
    high: 'at most',
    preferredLow: 'preferred from',
    preferredHigh: 'preferred to',
    atLimit: 'may sit exactly at the limit',
    inOperation: 'holds on the slopes the vehicle works on',
    allowance: 'allowance from the manual',
    basis: 'on whose word',
    source: 'document and page, or clause',
    vehicles: 'the vehicles a law is for',
    reason: 'why it may be looser than law or usage',
    length: 'length between its ends',
    limitMissing: 'limit not entered',
    allowanceMissing: 'allowance not entered',
    surfaces: 'How well the phone lies on it',
    surfacesWhy: 'Standard uncertainties, assumed until you know better.',
    hold: 'tilt',
    align: 'turn',
    save: 'Save',
    saved: 'saved',
    unsaved: 'not saved yet',
    out: 'Copy out (JSON)',
    in: 'Bring in (JSON)',
    blank: 'Empty it',
    examples: 'Trade usage again',
    replaced: 'Put into the fields. Look it through, then save.',
    loose:
      'Examples are common practice without a source. Put the manual’s numbers in their place.',
    notANumber: 'Enter a number, such as 12 or 12.5, or leave it empty.',
    tooLarge: 'This file is too large for a limit set; nothing was changed.',
    notJson: 'This file is not JSON; nothing was changed.',
    /** @param {string} why */
    refused: (why) => `Refused: ${why.replace(/\.$/, '')}. Nothing was changed.`,
    wrongField: 'See the field that is marked.',
  },
};
