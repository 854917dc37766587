// Every word that a person reads. One catalogue; another language is another file of this shape.
// Installers' words: short, what to do first. Nothing here says that a thing is fit for use.

import { forNumber, t } from './language.js';
import { clock, until } from './units.js';

export const text = {
  name: 'Plumbmark',
  start: {
    lead: t`Hold the phone to the mounted part, or type what the tape tells. The page says within, beyond or not proven, and what to do about it.`,
    openJob: t`Open job`,
    stopOn: t`STOP is on in this job: heater off, everybody out.`,
    allow: t`Allow sensors`,
    tryout: t`Try-out`,
    tape: t`Tape and tables, no sensors`,
    captures: t`Captures`,
    jobs: t`Jobs`,
    limits: t`Limits`,
    settings: t`Units, language`,
    first: t`First`,
    cautions: [
      t`The heater’s manual, local codes and licensed practice come first.`,
      t`Engine off and cold. Vehicle chocked. Never under a cab or an air-sprung body without stands.`,
      t`No phone on a pipe that has been hot: burns.`,
    ],
    version: t`Version`,
  },
  guides: { minutes: t`Five minutes`, plusMinus: t`What ± means` },
  sensors: {
    denied: t`The browser refused the sensors. Chrome: tap the sign left of the address, then Permissions, and allow motion sensors. Safari: close this tab, open it again and answer “Allow”; in Settings, Apps, Safari, clear this page’s data if it does not ask. Then tap again. Until then “Tape and tables, no sensors” below does all but the angles.`,
    insecure: t`This address gets no sensors: browsers give them to https pages and to localhost only. Open the page by https, or reach the computer as localhost over the cable.`,
    unsupported: t`This browser has no motion sensors for pages. Use another one, or the try-out.`,
    asking: t`Asking the browser …`,
  },
  parts: {
    title: t`Job`,
    heater: t`Heater`,
    pump: t`Metering pump`,
    filter: t`Filter`,
    pipe: t`Pipe leg`,
    sub: {
      heater: t`fuel port, warm-air outlet`,
      pump: t`outlet end, roll`,
      filter: t`upright, arrow with the flow`,
      pipe: t`of exhaust or air: its fall`,
    },
    unchecked: t`not checked`,
    /** @param {number} n */
    open: (n) => t`${n} not checked`,
    all: t`All captures`,
    jobs: t`All jobs`,
    phone: t`This phone`,
    record: t`Record`,
    mayGo: t`This browser may throw saved jobs away when space is short: hand the record out when you leave.`,
    again: t`Check again`,
    /** The order of the work. @type {Record<string, string>} */
    groups: {
      first: t`Before the first cut`,
      seat: t`Set and seal`,
      air: t`Warm air`,
      fuel: t`Fuel`,
      flue: t`Exhaust and combustion air`,
      supply: t`Supply`,
      start: t`First start`,
    },
    limits: t`Limits`,
    /** @param {number} n @param {number} of */
    entered: (n, of) => t`${n} of ${of} from the manual`,
    path: { whole: t`Whole job`, angles: t`Angles only` },
    name: t`Name it: vehicle, heater, customer`,
    pathLegend: t`What to check`,
    anglesOnly: t`The rest of the job is not looked at here.`,
    notNeeded: t`not needed`,
    seen: t`seen`,
    notFound: t`looked for, not found`,
    /** @param {string} what */
    next: (what) => t`Next: ${what}`,
    toStop: t`STOP: what now`,
    lost: t`counts no more, or never did: read it again`,
    /** @param {{ open: number, beyond: number, not_proven: number, within: number, usage: number,
     *   not_found: number, stopped: number, seen: number, not_needed: number }} n */
    summary: ({
      open,
      beyond,
      not_proven,
      within,
      usage,
      not_found,
      stopped,
      seen,
      not_needed,
    }) => {
      // Nothing beyond says nothing while nothing was looked at.
      const answered = beyond + not_proven + within > 0;
      return [
        answered && (beyond ? t`${beyond} beyond` : t`nothing beyond`),
        answered && (not_proven ? t`${not_proven} not proven` : t`nothing unproven`),
        open ? t`${open} not checked` : t`nothing unchecked`,
        within && t`${within} within`,
        within && usage && t`${usage} of them only trade usage`,
        not_found && t`${not_found} looked for and not found`,
        stopped && t`stopped: ${stopped}`,
        seen && t`${seen} seen`,
        not_needed && t`${not_needed} not needed`,
      ]
        .filter(Boolean)
        .join(', ');
    },
  },
  /** Sections of the tape-measure half: name, and what it is about. */
  sections: {
    job: [t`First questions`, t`manual, approval, dangerous goods`],
    demand: [t`Heat wanted`, t`loss, heater, warming up, a night`],
    place: [t`Place`, t`clearances, cut plan, fit`],
    support: [t`Support`, t`evenness under the seal, plate, seal`],
    ducts: [t`Ducts`, t`bends, loss, air flow, return air`],
    fuel: [t`Fuel`, t`line, lift, prime, standpipe`],
    flue: [t`Exhaust and combustion air`, t`legs, low points, ends`],
    supply: [t`Supply`, t`cable, fuse, battery bank, hours`],
    start_up: [t`First start`, t`carbon monoxide, leaks, values, driver`],
  },
  photos: {
    take: t`Take a photo`,
    of: t`photo of this check`,
    failed: t`That picture could not be read. Take it again.`,
  },
  checks: {
    heater_port: t`Fuel port`,
    heater_outlet: t`Warm-air outlet`,
    pump_outlet: t`Pump outlet`,
    pump_roll: t`Pump roll`,
    filter_upright: t`Filter, off upright`,
    pipe_fall: t`Fall of the leg`,
  },
  axis: {
    heater_port: t`elevation of the port`,
    heater_outlet: t`elevation of the outlet`,
    pump_outlet: t`elevation of the outlet end`,
    pump_roll: t`turn about its length`,
    filter_upright: t`arrow off straight up`,
    pipe_fall: t`elevation away from the heater`,
  },
  holds: {
    back: t`Back of the phone`,
    long_edge: t`Long edge`,
    short_edge: t`Short edge`,
  },
  surfaces: {
    metal_face: t`on a metal face`,
    sheet: t`on sheet or cover`,
    round_body: t`along the round body`,
    bracket: t`on the bracket’s flat`,
    bar: t`on a straight bar along it`,
  },
  hold: {
    title: t`How to hold it`,
    how: {
      back: t`Screen away from the part, top edge towards the`,
      long_edge: t`Right long edge on the part, top edge towards the`,
      short_edge: t`Bottom edge on the part, right side towards the`,
    },
    gives: t`gives`,
    next: t`Hold it like this`,
    other: t`Other ways`,
    topEdge: t`top edge`,
    refusedTitle: t`Ways that give nothing`,
    no_roll: t`roll: not from this hold`,
  },
  refusals: {
    no_such_surface: t`this part has no such surface`,
    edge_on_bracket: t`the flat is too short for an edge: use the back`,
    edge_too_short: t`the short edge covers too little: use the long one`,
  },
  cautions: {
    heater: t`Heater off and cold. Keep the phone off a face that has blown hot air.`,
    pump: t`Keep flames and sparks away from fuel lines. Catch what drips.`,
    filter: t`Keep flames and sparks away from fuel lines. Catch what drips.`,
    pipe: t`Never on a pipe that has been hot: it burns, and heat spoils the phone.`,
  },
  headEnd: {
    heater: t`warm-air outlet`,
    pump: t`pump outlet (heater end)`,
    filter: t`end that the arrow points to`,
    pipe: t`end away from the heater`,
  },
  ends: {
    title: t`Which end is lower?`,
    questions: {
      heater_port: t`Fuel port or the face opposite: which is lower?`,
      heater_outlet: t`Which end of the heater is lower?`,
      pump_outlet: t`Which end of the pump is lower?`,
      filter_upright: t`Which end of the filter is lower?`,
      pipe_fall: t`Which end of the pipe leg is lower?`,
    },
    tail: {
      heater_port: t`Face opposite the port`,
      heater_outlet: t`Intake end`,
      pump_outlet: t`Tank end`,
      filter_upright: t`End the arrow comes from`,
      pipe_fall: t`Heater end`,
    },
    head: {
      heater_port: t`Fuel port`,
      heater_outlet: t`Warm-air outlet`,
      pump_outlet: t`Outlet, heater end`,
      filter_upright: t`End the arrow points to`,
      pipe_fall: t`Far end`,
    },
    cant: t`Can’t tell`,
    why: t`A phone held the wrong way round reads the same slope with the wrong end up. Your eye settles that; the phone does the degrees.`,
    photoWhy: t`With another phone, photograph this one on the part: the arrow below, the part’s flow mark beside it. Then bring the picture here. Without it the reading is kept and no verdict is given.`,
    photo: t`Bring the picture`,
    without: t`Go on without it`,
    arrow: t`towards the`,
  },
  live: {
    capture: t`Capture`,
    waiting: t`Waiting …`,
    turnNow: t`Turn the phone`,
    blind: t`Blind reading`,
    trapped: t`no reading`,
    level: t`level`,
    up: t`up`,
    unchecked: t`Phone not yet checked`,
    /** @param {string} time */
    checked: (time) => t`Phone checked ${time}`,
    turned: t`Turned end for end`,
    isTurned: t`It is turned`,
    turn: t`Turn end for end`,
    cancelTurn: t`Cancel turn`,
    turnHow: t`Both placements together make the reading.`,
    /** @param {string} margin */
    within: (margin) => t`${margin} left after the uncertainty.`,
    /** @param {string} what */
    settle: (what) => t`Mostly ${what}.`,
    beyondHow: t`Then read again.`,
    tooNarrow: t`These limits lie closer together than this reading can tell. Use a better gauge.`,
    enterLimit: t`Enter the limit from the heater’s manual, under Limits.`,
    enterAllowance: t`Position allowed; the manual’s allowance has not been entered.`,
    preferred: t`Better still:`,
    preferredReached: t`In the preferred band.`,
    checkEnds: t`Eye and reading name different ends. Look again which end is lower (‹, or “Read again”). If you saw right, the phone lies the wrong way round.`,
    endNotTold: t`Nobody said which end is lower: the reading is kept without a verdict.`,
    rollUndefined: t`So near plumb there is no roll. Read it on a flat that lies less steep.`,
    /** @param {string} angle @param {string | null} rise @param {string} over */
    raise: (angle, rise, over) =>
      rise ? t`Raise the %s by ${angle}: ${rise} over ${over}.` : t`Raise the %s by ${angle}.`,
    /** @param {string} angle @param {string | null} rise @param {string} over */
    lower: (angle, rise, over) =>
      rise ? t`Lower the %s by ${angle}: ${rise} over ${over}.` : t`Lower the %s by ${angle}.`,
    /** @param {string} angle */
    upright: (angle) => t`Turn it ${angle} towards upright.`,
    /** @param {string} angle */
    fromUpright: (angle) => t`Turn it ${angle} away from upright.`,
    /** @param {string} angle @param {boolean} right */
    roll: (angle, right) =>
      right
        ? t`Turn it ${angle} clockwise, seen from its tank end.`
        : t`Turn it ${angle} anticlockwise, seen from its tank end.`,
  },
  moves: {
    heater_port: t`fuel port`,
    heater_outlet: t`outlet end`,
    pump_outlet: t`outlet end`,
    filter_upright: t`arrow’s end`,
    pipe_fall: t`far end`,
  },
  verdicts: {
    within: t`within`,
    beyond: t`beyond`,
    not_proven: t`not proven`,
    none: t`no verdict`,
  },
  whys: {
    limit_not_entered: t`limit not entered`,
    allowance_not_entered: t`position allowed; allowance not entered`,
    ends_disagree: t`eye and reading disagree`,
    end_not_told: t`lower end not told`,
    roll_undefined: t`no roll so near plumb`,
  },
  bases: {
    manual: t`manual`,
    law: t`law`,
    trade_usage: t`trade usage`,
    assumed: t`assumed`,
  },
  basisLine: {
    /** @param {string} source */
    manual: (source) => t`Limit from the manual: ${source}.`,
    /** @param {string} source */
    law: (source) => t`Limit from law: ${source}.`,
    /** @param {string} source */
    trade_usage: (source) => (source ? t`Limit: ${source}.` : t`Limit: trade usage.`),
    /** @param {string} source */
    assumed: (source) => (source ? t`Limit: ${source}.` : t`Limit: assumed.`),
  },
  /** Verdicts against a number that is not the manual's, in words. */
  againstUsage: {
    trade_usage: t`trade usage: manual not entered`,
    assumed: t`an assumed limit: manual not entered`,
  },
  sources: {
    noise: t`noise of the samples`,
    step: t`step of the readings`,
    settle: t`settling of the phone`,
    zero: t`the sensor’s own zero`,
    scale: t`scale of the sensor`,
    hold: t`how it lies on the part`,
    align: t`edge against the part’s axis`,
    datum: t`reading of the vehicle’s level`,
    heading: t`which way the part points`,
    rake: t`load and springs of the vehicle`,
  },
  reasons: {
    starting: [t`starting`, t`Listening to the sensors.`],
    filling: [t`keep it still`, t`One second of rest makes a reading.`],
    no_sensor: [
      t`no sensor`,
      t`The browser sends no motion values. Go back to the first screen and tap “Allow sensors”, or use another phone.`,
    ],
    values_missing: [
      t`sensor failing`,
      t`Parts of the sensor’s values are missing. Restart the browser.`,
    ],
    not_finite: [
      t`sensor failing`,
      t`The sensor sent something that is no number. Restart the browser.`,
    ],
    time_repeated: [
      t`clock fault`,
      t`Two events carry the same time. Wait, or restart the browser.`,
    ],
    time_backward: [
      t`clock fault`,
      t`The events’ time ran backward. Wait, or restart the browser.`,
    ],
    gap: [t`interrupted`, t`The sensor paused for a moment. Keep the phone still.`],
    stale: [
      t`sensor silent`,
      t`No event for a while. Keep this page in front; if it stays, start again.`,
    ],
    not_gravity: [t`knocked`, t`That was not gravity alone. Keep it still.`],
    moving: [t`keep it still`, t`It moves. No number is shown until it rests.`],
    tremor: [t`trembling`, t`A hand or an engine shakes it. Rest it on the part; engine off.`],
    drifting: [t`settling`, t`It still moves slowly, or the phone has not settled. Keep it still.`],
    settling: [t`settling`, t`This phone needs three seconds of rest.`],
    channels_disagree: [
      t`settling`,
      t`The phone’s two sensors say different things. Keep it still; if this stays, do not use this phone.`,
    ],
    sign_unknown: [t`one question`, t`Lay the phone face up on anything flat and tap below.`],
    sign_flipped: [t`sensor turned`, t`The sensor changed its sign. Tap below to learn it again.`],
    not_turned: [t`turn it`, t`Turn the phone end for end on the same spot, then keep it still.`],
    turn_too_old: [
      t`too long ago`,
      t`More than three minutes since the first placement. Cancel, and start the turn again.`,
    ],
    turn_disagrees: [
      t`does not fit`,
      t`The two placements do not fit together: it rocks, was tipped, or the part moved. Cancel, and start the turn again.`,
    ],
    trapped: [t`no reading`, t`The calculation stopped and is being started anew.`],
  },
  faceUp: {
    button: t`It lies face up`,
    again: t`Not flat or not still yet. Lay it face up and tap again.`,
  },
  learnAgain: t`Learn it again`,
  blind: {
    title: t`Blind reading`,
    armed: t`Armed. Place the phone.`,
    moved: t`Placed. Keep it still.`,
    steps: [
      [t`Hold it to the part`, t`as on the picture before`],
      [t`Keep it still`, t`about two seconds`],
      [t`Wait for the sound`, t`it is captured by itself`],
      [t`Take it away and read`, t`the capture stays, with its time`],
    ],
    stop: t`Stop`,
    hear: t`Hear them`,
    sounds: {
      within: t`one long`,
      beyond: t`two short`,
      not_proven: t`three low`,
      none: t`four quick`,
    },
  },
  captured: {
    title: t`Captured`,
    /** @param {string} time */
    at: (time) => t`captured ${time}`,
    saving: t`saving …`,
    saved: t`saved`,
    /** @param {string} part */
    next: (part) => t`Next: ${part}`,
    again: t`Read again`,
    done: t`To the job`,
    where: t`Where ± comes from`,
    blind: t`blind reading`,
    photo: t`with photo`,
    tryout: t`try-out, no measurement`,
  },
  storeErrors: {
    blocked: t`Not saved: this browser lets the page keep nothing (private window, or storage switched off). Copy out what is here, and open the page in a normal window.`,
    full: t`Not saved: the storage is full. Free some space on the phone, then try again; copy out meanwhile.`,
    failed: t`Not saved: the browser could not write it. Try again; copy out meanwhile.`,
    wrong_store: t`Not saved: a try-out capture can’t enter a real job.`,
    older_tab: t`Not saved: another tab holds an earlier version of this page. Close it, then try again; copy out meanwhile.`,
    newer: t`Not saved: the storage is of a newer version of this page. Copy out what is here, then load the page anew.`,
    evicted: t`Not saved: the browser threw its storage away or closed it. What is here is still in memory: try again, or copy it out before you close the page.`,
    gone: t`Not saved: this job was removed for good in another tab. Copy it out, or try again to make a new job of it.`,
    unloaded: t`A part of this page is missing: another tab put a newer version in force, or the browser threw it away. Load it anew.`,
    elsewhere: t`This job is open in another tab: one tab writes to it at a time. Close the other one, or go on here.`,
  },
  /** Ways out. */
  notKept: {
    copyOut: t`Copy out what is here`,
    tryAgain: t`Try again`,
    reload: t`Load anew`,
    useHere: t`Go on here`,
  },
  details: {
    title: t`Where ± comes from`,
    standard: t`Standard uncertainties. They add as squares: two equal ones make 1.4 times one, not twice.`,
    /** @param {string} time */
    level: (time) => t`vehicle level read ${time}`,
    /** @param {string} k */
    k: (k) => t`times k = ${k} for 95 %`,
    samples: (/** @type {number} */ n, /** @type {string} */ rate) =>
      forNumber(n, t`1 sample, ${rate} a second`, t`${n} samples, ${rate} a second`),
    channel: {
      acceleration: t`from acceleration`,
      orientation: t`from the fused orientation alone`,
    },
    /** @param {string} step */
    step: (step) => t`step of the readings ${step} m/s²`,
    probability: (/** @type {string} */ p) => t`probability of conformance ${p}, for the record`,
    endTold: t`lower end by eye`,
    endWords: { tail: t`tail`, head: t`head`, cant_tell: t`could not tell`, photo: t`by photo` },
    fallback: t`Angles this steep are shown in degrees.`,
    back: t`Back`,
    no_claim: t`This shows what was measured, how, and against whose limits. It is no approval.`,
  },
  overruled: {
    why: t`Taken on the wrong part, or slipped? It stays in the record, but does not count.`,
    ask: t`This capture does not count`,
    who: t`Your name`,
    reason: t`Why it does not count`,
    needed: t`Enter your name and why.`,
    set: t`Keep it, but do not count it`,
    takeBack: t`It counts after all`,
    /** @param {string} who @param {string} time @param {string} reason */
    told: (who, time, reason) => t`Does not count: ${who}, ${time}: ${reason}`,
    short: t`does not count`,
  },
  captures: {
    title: t`Captures`,
    empty: t`Nothing captured yet.`,
    go: t`To the job`,
    gauge: t`Take in a gauge’s captures`,
  },
  /** Of a capture that a gauge took. */
  gauge: {
    /** @param {import('./types.js').Gauge} of */
    by: ({ number, count, software }) =>
      t`By gauge ${number}, its capture ${count}, software ${software}`,
    /** It has no clock. @param {string} time */
    at: (time) => t`taken in ${time}`,
    zero: {
      assumed: t`Gauge not calibrated`,
      found: t`Gauge calibrated`,
      turn: t`Gauge turned end for end`,
    },
    holds: { back: t`Back of the gauge`, long_edge: t`Long edge`, short_edge: t`Short edge` },
  },
  level: {
    title: t`Vehicle level`,
    how: t`Lay the phone on the rail or floor that the part is bolted to, its top edge pointing as it does on the part.`,
    where: t`It lies on`,
    surfaces: { metal_face: t`the rail`, sheet: t`the cab floor` },
    lengthwise: t`lengthwise, + top edge up`,
    crosswise: t`crosswise, + left side up`,
    keep: t`Keep as level`,
    again: t`Read again`,
    done: t`Done`,
    forget: t`Forget it`,
    terms: t`About the vehicle`,
    unread: t`not read`,
    /** @param {number} ms */
    read: (ms) => {
      const [time, end] = [clock(ms), until(ms)];
      return t`read ${time}, counts until ${end} if it stands still`;
    },
    /** @param {string} time */
    over: (time) => t`read ${time}: over an hour ago, read it again`,
    asBefore: t`The vehicle stands as before.`,
    /** @param {string} time */
    moved: (time) =>
      t`The vehicle has moved since ${time}: answers in the vehicle taken since then no longer count. Read those parts again.`,
    movedSince: t`the vehicle moved after this: the answer in the vehicle no longer counts`,
    inVehicle: t`in the vehicle`,
    parked: t`as parked`,
    /** @param {string} angle */
    takes: (angle) => t`slope takes ${angle} of margin`,
    takesAll: t`slope can take all of the margin`,
    points: t`Seen from the phone on the rail, the part points`,
    pointings: {
      same: t`the same way`,
      left: t`to the left`,
      opposite: t`the opposite way`,
      right: t`to the right`,
    },
  },
  levelRefusals: {
    stale: t`vehicle level is over an hour old: read it again`,
    no_heading: t`not told so near plumb: as parked counts`,
    too_steep: t`Too steep for a rail or a floor: lay the phone flat, screen up.`,
  },
  update: { ready: t`A new version is ready.`, apply: t`Use it now` },
  back: t`Back`,
  tryout: {
    band: t`Try-out: a simulated phone. Nothing here is a measurement.`,
    up: t`Raise`,
    down: t`Lower`,
    rollLeft: t`Roll −`,
    rollRight: t`Roll +`,
    knock: t`Knock`,
    turn: t`Other end up`,
    end: t`End for end`,
    quarter: t`By a quarter`,
    table: t`To the table`,
    rail: t`To the rail`,
    part: t`To the part`,
    trace: t`Play a recording`,
    tracePlaying: t`Playing a recording …`,
    leave: t`Leave`,
    limits: t`Try-out: book cart of Lower Marsh`,
    source: t`invented for the try-out`,
    badTrace: t`That file is no recording of the kind described in the guide: it needs t_ms, ax, ay, az.`,
  },
  /** Of a limit set, by core's names. */
  /** @type {Record<string, (low: number, high: number) => string>} */
  limitProblems: {
    out_of_range: (low, high) => t`enter a number from ${low} to ${high}`,
    hold_out_of_range: () => t`enter a number from 0.02 to 5`,
    not_above_low: () => t`“at most” must be more than “at least”`,
    roll_needs_both: () => t`a limit on roll needs both ends`,
    outside_permitted: () => t`the preferred band must lie inside the permitted one`,
    allowance_needs_manual: () =>
      t`an allowance comes from the manual or a law, for a part that may sit at its limit`,
    source_missing: () => t`name the document and page, or the clause`,
    repeated: () => t`there are two of it; keep one`,
    too_long: (_, most) => t`shorten it to ${most} letters`,
    not_a_limit_set: () => t`this is not a limit set`,
    other_version: () => t`this limit set was written by another version`,
  },
  /** What core's own limits say of themselves, by what is kept.
   * @type {Record<string, string>} */
  ofCore: {
    'Examples: trade usage': t`Examples: trade usage`,
    'common practice, no source': t`common practice, no source`,
    'US towing vessels': t`US towing vessels`,
    'US petrol boats': t`US petrol boats`,
  },
  noScript: t`This page measures with scripts. Switch them on for it.`,
  /** What is wrong with a file, at the place that is named before it. */
  faults: {
    notKnown: t`this field is not known`,
    object: t`an object is expected`,
    number: t`a number is expected`,
    text: t`text is expected`,
    list: t`a list is expected`,
    flag: t`true or false is expected`,
    repeated: t`there are two of it; keep one`,
    missing: t`it is missing`,
    tooLong: t`it is too long`,
    otherForm: t`it has another form`,
    tooMany: t`there are too many of them`,
    tooFew: t`there are too few of them`,
    /** @param {string} what */
    expected: (what) => t`${what} is expected`,
    /** @param {number} least */
    below: (least) => t`it is below ${least}`,
    /** @param {string} name */
    strange: (name) => t`“${name}” is not known`,
  },
};
