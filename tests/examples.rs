//! The crate's examples do what they say: known attitudes lie inside the intervals, each with its
//! verdict, and what can't be read is refused by line.

#[expect(dead_code, reason = "`main` is for people")]
#[path = "../core/examples/accelerometer/main.rs"]
mod accelerometer;
#[expect(dead_code, reason = "`main` is for people")]
#[path = "../core/examples/csv_verdicts.rs"]
mod csv_verdicts;

use accelerometer::pretend::{Bus, Delay};
use accelerometer::{driver, verdicts};
use plumbmark::decision::{Verdict, Why};

const PUMP: &str = include_str!("../core/examples/pump.csv");

fn told(recording: &str) -> Result<String, String> {
    let mut out = Vec::new();
    csv_verdicts::verdicts(recording.as_bytes(), &mut out).map_err(|e| e.to_string())?;
    Ok(String::from_utf8(out).unwrap())
}

/// Second, verdict, value and U of a line with an answer.
fn answer(line: &str) -> Option<(f64, &str, f64, f64)> {
    let (second, rest) = line.split_once(" s  pump_outlet: ")?;
    let (verdict, rest) = rest.split_once(", ")?;
    let (value, rest) = rest.split_once("° ± ")?;
    let (u, _) = rest.split_once('°')?;
    let number = |s: &str| s.trim().parse().unwrap();
    Some((number(second), verdict, number(value), number(u)))
}

#[test]
fn a_recording_gives_the_angles_that_it_was_made_with() {
    let told = told(PUMP).unwrap();
    assert!(told.starts_with("pump_outlet: 18.5° or more (invented manual, page 12)\n"));
    let mut verdicts = Vec::new();
    for (second, verdict, value, u) in told.lines().filter_map(answer) {
        // What stands in the file's own words.
        let truth = [27.0, 19.0, 6.0][(second / 3.0).min(2.0) as usize];
        assert!((value - truth).abs() <= u, "{second} s: {value} ± {u}");
        // JCGM 106, guard band as wide as U.
        let right = match value {
            v if v - u >= 18.5 => "within",
            v if v + u < 18.5 => "beyond",
            _ => "not proven",
        };
        assert_eq!(verdict, right, "{second} s");
        verdicts.push(verdict);
    }
    assert_eq!(verdicts, ["within", "not proven", "beyond", "beyond"]);
    // While it is moved there is no number.
    let moved: Vec<&str> = told.lines().filter(|l| l.ends_with("moving")).collect();
    assert_eq!(moved.len(), 2, "{told}");
}

#[test]
fn a_line_that_cant_be_read_is_named() {
    let named = |rows: &str| told(&format!("# ours\n\nt_ms,ax,ay,az\n{rows}")).unwrap_err();
    for (rows, says) in [
        (
            "0,-8.5,4.9,0\n20,-8.5,4;9,0\n",
            "line 5: `4;9` is no number",
        ),
        ("0,-8.5,4.9\n", "line 4: 3 cells; write t_ms,ax,ay,az"),
        (",-8.5,4.9,0\n", "line 4: no time"),
        ("", "there are no samples"),
    ] {
        assert!(named(rows).starts_with(says), "{}", named(rows));
    }
    let nameless = told("0,-8.5,4.9,0\n").unwrap_err();
    assert!(
        nameless.starts_with("line 1: the names are missing"),
        "{nameless}"
    );
}

#[test]
fn a_cell_left_empty_or_not_finite_gives_no_number() {
    for (cell, reason) in [("", "values_missing"), ("NaN", "not_finite")] {
        let rest: String = (0..50)
            .map(|i| format!("{},-8.5,4.9,0\n", 20 * i))
            .collect();
        let last = told(&format!("t_ms,ax,ay,az\n{rest}1000,-8.5,{cell},0\n")).unwrap();
        assert!(last.ends_with(&format!("no reading: {reason}\n")), "{last}");
    }
}

#[test]
fn an_accelerometer_gives_the_attitude_that_it_lies_in() {
    for (elevation_deg, roll_deg) in [(31.0, -4.0), (24.0, 11.0), (8.0, 0.0), (-35.0, 2.0)] {
        let outcomes = verdicts(Bus::at(elevation_deg, roll_deg), &mut Delay).unwrap();
        let [outlet, roll] = outcomes.as_slice() else {
            panic!("a bracket gives two checks");
        };
        let (slope, turn) = (outlet.measured.unwrap(), roll.measured.unwrap());
        // This sensor has no zero: what is left is noise and rounding.
        assert!((slope.value_deg - elevation_deg).abs() < 0.1, "{slope:?}");
        assert!((turn.value_deg - roll_deg).abs() < 0.1, "{turn:?}");
        // 40 mg as a rectangle is 1.32°, of which 95 % take 1.65 to 1.96 times as much.
        assert!((2.1..4.5).contains(&slope.u_deg), "{slope:?}");
        let right = match elevation_deg - 22.5 {
            over if over > slope.u_deg => Verdict::Within,
            over if over < -slope.u_deg => Verdict::Beyond,
            _ => Verdict::NotProven,
        };
        let eye_disagrees = elevation_deg < -slope.u_deg;
        if eye_disagrees {
            assert_eq!(
                (outlet.verdict, outlet.why),
                (Verdict::None, Some(Why::EndsDisagree))
            );
        } else {
            assert_eq!(outlet.verdict, right, "{elevation_deg}");
        }
        assert_eq!(
            (roll.verdict, roll.why),
            (Verdict::NotProven, Some(Why::LimitNotEntered))
        );
    }
}

#[test]
fn a_sensor_that_fails_gives_no_number() {
    let fault = |change: fn(&mut Bus)| {
        let mut bus = Bus::at(31.0, 0.0);
        change(&mut bus);
        verdicts(bus, &mut Delay).unwrap_err().to_string()
    };
    let silent = fault(|bus| bus.registers[usize::from(driver::STATUS)] = 0);
    assert_eq!(silent, "no reading: stale");
    let other = fault(|bus| bus.registers[usize::from(driver::IDENTITY.0)] ^= 1);
    assert_eq!(other, "no such sensor at address 0x18");
}
