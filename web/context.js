// What every screen is given: the core, the store, the job that is open, the way from screen to
// screen.

import { StoreError } from './database.js';
import { Keeping } from './keeping.js';
import { listen } from './phone.js';
import { allChecks, worstFirst } from './sentences.js';
import { play } from './sound.js';
import { text } from './text.js';
import { version, wholeVersion } from './version.js';
import { keepAwake, letSleep } from './wake.js';

/** @typedef {import('./types.js').Capture} Capture */
/** @typedef {import('./types.js').PartId} PartId */
/** @typedef {HTMLElement & { enter?: () => void, leave?: () => void, follow?: (kept: Promise<Capture>) => void }} Screen */
/** @typedef {Record<string, (ctx: Context, params: any) => Screen>} Screens */

/** Where nothing is measured and nothing typed: only there a new version may come up. */
const AT_REST = ['start', 'parts', 'captures', 'phone', 'settings'];
/** While one of these is open the screen stays on. */
const WATCHING = ['live', 'turn', 'poses', 'level'];
/** Levels and captures go by; the list of levels need not grow for ever. */
const LEVELS_KEPT = 50;

/** What a visit without a number is. */
const START = { name: 'start', params: {} };

/** What every screen is given. */
export class Context extends Keeping {
  text = text;
  version = version;
  wholeVersion = wholeVersion;
  /** @type {import('./types.js').LimitSet} */ limits;
  /** @type {import('./types.js').Placement | null} */ placement = null;
  /** Which way each part points against the phone on the rail. @type {Record<string, string>} */
  pointings = {};
  /** What the level is read on: a rail's metal face until told. */
  levelSurface = 'metal_face';
  /** What the level that is kept was read on. */
  levelReadOn = '';
  /** @type {Blob | null} */ photo = null;
  /** The section that was opened last from the list. */ lastOf = '';
  /** @type {(() => void) | null} */ #stop = null;
  /** @type {Screen | null} */ #screen = null;
  /** @type {Promise<any> | null} */ #opening = null;
  /** Parameters hold captures and blobs; history keeps only their number. @type {any[]} */
  #visits = [];
  /** The visits that "‹" leads back through, by their depth. @type {number[]} */ #path = [];
  name = '';
  /** Called when a screen has come. */
  onShow = () => {};

  /** @param {import('./engine.js').Engine} engine @param {Screens} screens those of the first load */
  constructor(engine, screens) {
    super((way) => this.#wayOut(way));
    this.engine = engine;
    this.screens = screens;
    this.limits = engine.defaultLimits();
    addEventListener('keydown', (e) => {
      if (['Tab', 'Escape'].includes(e.key)) this.loadPlan().then((plan) => plan.onKey(e));
    });
    addEventListener('popstate', (e) => this.#revisit(e.state?.visit));
  }

  get feeding() {
    return this.#stop !== null;
  }

  /** Opens the database and takes over what it holds.
   * @param {boolean} tryout @param {number} [job] the one that was open last until told */
  async open(tryout, job) {
    this.#opening = null;
    this.lastOf = '';
    await this.openKept(tryout, job);
    this.limits = this.job.limits ?? this.engine.defaultLimits();
    this.engine.setLimits(this.limits);
    this.engine.setSign(this.settings.sign);
    this.engine.restoreFindings(this.settings.findings);
    this.engine.setVehicle(this.settings.vehicle);
    // A level is not kept over a restart, nor into the try-out: the vehicle may have moved.
    this.engine.call((l) => l.forget_level());
    // A number for this phone, so that what is found of it stays its own.
    const device = this.settings.device || crypto.getRandomValues(new Uint32Array(1))[0];
    if (device !== this.settings.device) await this.keep({ device });
    this.engine.setDevice(device, this.settings.in_case);
    this.useHand(this.settings.hand);
  }

  /** @param {'right' | 'left'} hand under whose thumb the one thing to do stands */
  useHand(hand) {
    document.documentElement.dataset.hand = hand;
    if (hand !== this.settings.hand) this.keep({ hand });
  }

  /** Opens another job. @param {number} job */
  async openJob(job) {
    await this.mayLeave();
    await this.keep({ job });
    await this.open(this.tryout);
  }

  /** Begins another job. @param {Partial<import('./types.js').Job>} like what it begins with */
  async newJob(like) {
    await this.mayLeave();
    const { id } = await this.stored().addJob(like);
    await this.openJob(id);
  }

  /** What the page does about something that is not kept. @param {import('./trouble.js').Way} way */
  async #wayOut(way) {
    if (way === 'reload') location.reload();
    else if (way === 'useHere') this.hold.takeOver();
    else await (await this.loadPlan()).rescue[way](this);
  }

  /** What another tab wrote meanwhile is read anew. @param {boolean} held */
  async onHold(held) {
    if (held) {
      await this.open(this.tryout, this.job.id);
      this.showAgain();
    } else this.tellHold(false);
  }

  /** The screen that is open, of what is kept now. */
  showAgain() {
    const { name, params } = this.#visits[history.state?.visit ?? -1] ?? START;
    // A capture or a job that the screen was given may have changed.
    if (params.capture || params.job) this.go('parts');
    else this.#show(name, params);
  }

  /** @param {string} name @param {any} [params] */
  go(name, params = {}) {
    const depth = history.state?.depth ?? 0;
    // Back to the job is back: "‹" there must not lead into what was left.
    const job = this.#path.findLastIndex((v, i) => i < depth && this.#visits[v]?.name === 'parts');
    if (name === 'parts' && !params.note && job > 0) return history.go(job - depth);
    const visit = this.#visits.push({ name, params }) - 1;
    this.#path.length = depth + 1;
    this.#path.push(visit);
    history.pushState({ visit, depth: depth + 1 }, '');
    this.#show(name, params);
  }

  /** @param {number | undefined} visit */
  #revisit(visit) {
    const { name, params } = this.#visits[visit ?? -1] ?? START;
    // A capture that was left is in the list; going back never measures again by itself.
    if (name === 'live' && params.blind) return history.back();
    this.#show(name, params);
  }

  /** Loads the tape-measure half, with what is kept of it. */
  async loadPlan() {
    // Once, however many ask at a time: a second one would type into records of its own.
    this.#opening ??= import('./plan/index.js').then(({ Plan }) => Plan.open(this));
    const opening = this.#opening;
    const plan = await opening.catch((error) => {
      // Its version was replaced by another tab, or the browser threw it away.
      this.#opening = null;
      this.trouble.tell(new StoreError('unloaded', error));
      throw error;
    });
    // Another database may have been opened meanwhile.
    if (opening === this.#opening) this.plan = plan;
    return plan;
  }

  /** @param {string} name @param {any} params */
  #show(name, params) {
    const make = this.screens[name] ?? this.plan?.screens[name];
    if (!make) {
      this.loadPlan().then(() => this.#show(name, params));
      return;
    }
    this.#screen?.leave?.();
    this.name = name;
    const screen = make(this, params);
    this.#screen = screen;
    document.getElementById('page')?.replaceChildren(screen);
    screen.querySelector('h1')?.focus({ preventScroll: true });
    scrollTo(0, 0);
    if (WATCHING.includes(name)) keepAwake();
    else letSleep();
    screen.enter?.();
    this.onShow();
  }

  isBusy() {
    return !AT_REST.includes(this.name);
  }

  /** From the tap that allowed them. */
  useSensors() {
    // In the try-out the simulated phone is the only one.
    if (this.tryout) return;
    this.#stop?.();
    this.#stop = listen(this.engine);
  }

  async startTryout() {
    if (this.tryout) return this.go('parts');
    await this.settle();
    // The notice that is in sight says why; leaving would take what only memory has.
    if (this.unsaved) return;
    const { mountTryout } = await import('./tryout/panel.js');
    await this.open(true);
    this.#stop?.();
    this.#stop = listen(this.engine);
    mountTryout(this, () => this.leaveTryout());
    this.go('parts');
  }

  /** A fresh page: nothing of the try-out stays in memory. */
  leaveTryout() {
    location.reload();
  }

  /** Keeps a sign that was learnt from data. */
  rememberSign() {
    const sign = this.engine.sign;
    if (sign !== 0 && sign !== this.settings.sign) this.keep({ sign });
  }

  /** @param {import('./types.js').LimitSet} set */
  async useLimits(set) {
    this.engine.setLimits(set);
    this.limits = set;
    await this.keepJob({ limits: set });
  }

  /** An error's message is the field that can't be. @param {import('./types.js').VehicleTerms} vehicle */
  async useVehicle(vehicle) {
    this.engine.setVehicle(vehicle);
    this.settings = { ...this.settings, vehicle };
    await this.stored().saveSettings({ vehicle });
  }

  /** @param {boolean} in_case */
  useCase(in_case) {
    this.engine.setDevice(this.settings.device, in_case);
    this.keep({ in_case });
  }

  /** What was found of this phone, for the next start. */
  keepFindings() {
    this.keep({ findings: this.engine.takeFindings() });
  }

  /** A level was read: captures of the one before may no longer count. @param {boolean} moved */
  keepLevel(moved) {
    const at_ms = this.engine.call((l) => l.level_taken_ms());
    if (!at_ms) return;
    this.keep({ levels: [...this.settings.levels, { at_ms, moved }].slice(-LEVELS_KEPT) });
  }

  /** @param {PartId} part @param {import('./types.js').Placement} placement */
  place(part, placement) {
    this.placement = placement;
    this.photo = null;
    this.engine.select(part, placement.hold, placement.surface);
    this.engine.point(this.pointings[part] ?? 'same');
    this.go(this.questions().length ? 'ends' : 'live', { part });
  }

  /** The checks of this placement that need the eye. */
  questions() {
    const asks = this.engine.catalogue.checks.filter((c) => c.asks_lower_end).map((c) => c.id);
    return (this.placement?.checks ?? []).filter((c) => asks.includes(c));
  }

  /** @param {string} check @param {import('./types.js').End} end */
  tellEnd(check, end) {
    this.engine.tellEnd(check, end);
  }

  /** @param {boolean} blind */
  capture(blind) {
    const report = this.engine.capture();
    if (!report) return;
    const level_ms = report.vehicle && this.engine.call((l) => l.level_taken_ms());
    /** @type {Capture} */
    const capture = {
      job_id: this.job.id,
      taken_at: new Date().toISOString(),
      tryout: this.tryout,
      blind,
      app_version: version,
      limits_name: this.limits.name,
      report,
      in_operation: this.limits.lines.filter((l) => l.holds_in_operation).map((l) => l.check),
      found_ms: report.zero_by === 'found' ? this.engine.foundAt(report.hold) : null,
      level_ms: level_ms ?? null,
      photo: this.photo,
    };
    const worst = worstFirst(allChecks(this, capture))[0];
    play(worst.verdict);
    this.captures = [...this.captures, capture];
    this.plan?.passed(capture.taken_at);
    const kept = this.keepCapture(capture);
    this.go('captured', { capture });
    this.#screen?.follow?.(kept);
  }
}
