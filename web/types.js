// Shapes that cross between the page's files. Types only.

/**
 * @typedef {'heater' | 'pump' | 'filter' | 'pipe'} PartId
 * @typedef {'within' | 'beyond' | 'not_proven' | 'none'} Verdict
 * @typedef {'tail' | 'head' | 'cant_tell' | 'photo'} End
 * @typedef {'assumed' | 'found' | 'turn'} ZeroBy
 * @typedef {'same' | 'left' | 'opposite' | 'right'} Pointing
 * @typedef {'manual' | 'law' | 'trade_usage' | 'assumed'} Basis
 *
 * @typedef {object} LimitLine
 * @property {string} check
 * @property {number | null} low_deg
 * @property {number | null} high_deg
 * @property {number | null} preferred_low_deg
 * @property {number | null} preferred_high_deg
 * @property {boolean} at_limit_allowed
 * @property {number | null} allowance_deg
 * @property {Basis} basis
 * @property {string} source
 * @property {string} vehicles that a law is for
 * @property {string} reason why it is looser than law or usage
 * @property {boolean} holds_in_operation
 * @property {number | null} length_mm
 *
 * @typedef {object} LimitSet
 * @property {string} format
 * @property {number} version
 * @property {string} name
 * @property {LimitLine[]} lines
 * @property {{ surface: string, hold_deg: number, align_deg: number }[]} surfaces
 * @property {BoundLine[]} bounds limits of what a tape, a table or a manual tells
 *
 * @typedef {object} BoundLine in the unit that its id ends with
 * @property {string} id
 * @property {number | null} low
 * @property {number | null} high
 * @property {Basis} basis
 * @property {string} source
 * @property {string} vehicles that a law is for
 * @property {string} reason why it is looser than law or usage
 *
 * @typedef {object} Photo
 * @property {number} [id] given by the store
 * @property {number} job_id
 * @property {string} sheet
 * @property {string} about which of its checks or facts
 * @property {string} at ISO 8601
 * @property {Blob} blob
 *
 * @typedef {object} Placement
 * @property {string} hold
 * @property {string} surface
 * @property {string[]} checks
 * @property {number[]} rotation row-major, body = R · device
 *
 * @typedef {object} PartEntry
 * @property {PartId} id
 * @property {string[]} checks
 * @property {Placement[]} placements
 * @property {{ hold: string, surface: string, why: string }[]} refused
 *
 * @typedef {object} CheckEntry
 * @property {string} id
 * @property {PartId} part
 * @property {'elevation' | 'off_plumb' | 'roll'} quantity
 * @property {number} low_deg
 * @property {number} high_deg
 * @property {number[]} axis_body
 * @property {boolean} asks_lower_end
 *
 * @typedef {object} Catalogue
 * @property {PartEntry[]} parts
 * @property {CheckEntry[]} checks
 * @property {(string | null)[]} reasons
 * @property {Verdict[]} verdicts
 * @property {(string | null)[]} whys
 * @property {string[]} sources
 * @property {string[]} advices
 * @property {Basis[]} bases
 * @property {string[]} holds
 * @property {string[]} surfaces
 * @property {End[]} ends
 * @property {LimitSet} default_limits
 * @property {LimitSet} blank_limits
 * @property {VehicleTerms} vehicle
 * @property {ZeroBy[]} zeros
 * @property {Pointing[]} pointings
 * @property {(string | null)[]} level_refusals
 * @property {Report['channel'][]} channels
 * @property {string[][]} refusals by list and place, for calls that may refuse
 * @property {string[]} fields of a limit set
 * @property {(keyof typeof import('./text.js').text.limitProblems)[]} problems of a limit set
 * @property {string[]} vehicle_fields
 *
 * @typedef {object} Advice
 * @property {string} kind
 * @property {number | null} turn_deg
 * @property {number | null} rise_mm
 * @property {number | null} over_mm
 *
 * @typedef {object} CheckReport
 * @property {string} id
 * @property {number | null} value
 * @property {number | null} u
 * @property {string} unit
 * @property {number | null} k
 * @property {{ low_deg: number | null, high_deg: number | null, preferred_low_deg: number | null,
 *   preferred_high_deg: number | null, allowance_deg: number | null } | null} limit
 * @property {Basis} basis
 * @property {string} source
 * @property {Verdict} verdict
 * @property {string | null} why
 * @property {number | null} margin_deg
 * @property {number | null} probability
 * @property {End | null} end_told
 * @property {boolean | null} in_preferred
 * @property {{ name: string, u_deg: number }[]} contributions
 * @property {string} dominant
 * @property {Advice} advice
 *
 * @typedef {object} Report
 * @property {string} format
 * @property {number} version
 * @property {PartId} part
 * @property {string} hold
 * @property {string} surface
 * @property {'acceleration' | 'orientation'} channel
 * @property {number} sign
 * @property {number} step_m_s2
 * @property {number} rate_hz
 * @property {number} samples
 * @property {ZeroBy} zero_by
 * @property {number[]} up
 * @property {number} pitch_deg
 * @property {number | null} roll_deg
 * @property {CheckReport[]} checks
 * @property {VehicleReport | null} vehicle
 *
 * @typedef {object} VehicleTerms degrees
 * @property {number} heading_deg
 * @property {number} lean_lengthwise_deg
 * @property {number} lean_crosswise_deg
 * @property {number} rake_deg
 * @property {number} working_lengthwise_deg
 * @property {number} working_crosswise_deg
 *
 * @typedef {object} VehicleReport
 * @property {number[]} level_up
 * @property {number} level_age_s
 * @property {VehicleTerms} terms
 * @property {Pointing} pointing
 * @property {string | null} refused
 * @property {CheckReport[]} checks
 * @property {({ slope_deg: number, takes_deg: number | null, decides: boolean } | null)[]} working
 *
 * @typedef {object} Capture
 * @property {number} [id] given by the store
 * @property {number} job_id
 * @property {string} taken_at ISO 8601
 * @property {boolean} tryout
 * @property {boolean} blind
 * @property {string} app_version
 * @property {string} limits_name
 * @property {Report} report
 * @property {string[]} in_operation checks whose limit held in operation
 * @property {number | null} found_ms when the phone had been checked
 * @property {number | null} level_ms when the vehicle's level had been read
 * @property {Blob | null} photo that shows which end is lower
 * @property {number[]} [photos] ids of others
 * @property {{ who: string, at: string, reason: string }} [overruled] why it does not count
 * @property {Gauge} [gauge] that took it; its time is then that of taking it in
 *
 * @typedef {object} Gauge
 * @property {string} number eight digits
 * @property {number} count its captures so far, this one too
 * @property {string} software
 * @property {string} crc of its line, eight digits
 *
 * One heater in one vehicle.
 * @typedef {object} Job
 * @property {number} id
 * @property {string} vehicle
 * @property {string} heater
 * @property {string} customer
 * @property {string} installer
 * @property {LimitSet | null} limits null while they are those that every job begins with
 * @property {string} created_at ISO 8601
 * @property {string} changed_at
 * @property {string | null} archived_at
 * @property {string | null} deleted_at
 * @property {Before | null} before what was measured the last time, where this job checks it again
 * @property {{ at: string, marks: Record<string, string> }} [filed] when it was last in a file, and
 *   what that file held: kept by the page as one file
 *
 * @typedef {{ id: string, what: string, value: number, u: number, unit: string,
 *   at: string | null, verdict?: string }} BeforeRow
 * @typedef {{ sha256: string, checks: BeforeRow[], stops?: string[] }} Before sum of that record, and
 *   what it told; verdicts and stops since version 3 of the record
 *
 * @typedef {object} Settings
 * @property {'deg' | 'percent' | 'mm_m'} angle_unit
 * @property {'right' | 'left'} hand the one that holds the phone and taps
 * @property {'metric' | 'us'} system
 * @property {number} sign learnt sign of this browser's gravity, 0 while not known
 * @property {Record<string, string>} placements last "hold/surface" by part
 * @property {boolean | null} persisted the browser's answer to "keep this"
 * @property {number} device a number for this phone, 0 until one is drawn
 * @property {boolean} in_case
 * @property {number[]} findings what was found of this phone, as core gives it
 * @property {VehicleTerms} vehicle what was told of the vehicle
 * @property {{ at_ms: number, moved: boolean }[]} levels when levels were read, and whether the
 *   vehicle had moved since the one before
 * @property {'whole' | 'angles'} path how much of the job is shown
 * @property {string} who who ticked last
 * @property {number} job the one that is open
 * @property {string} document the manual that limits are copied from
 *
 * @typedef {import('./store.js').Store} Store
 * @typedef {import('./engine.js').Engine} Engine
 */

export {};
