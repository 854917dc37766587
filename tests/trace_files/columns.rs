//! What each key and column does.

use crate::made::{G, NAMES, UPS, browser, six_poses, studied};
use plumbmark_tests::traces::{How, Kind, Options, Trace, csv, run, spots};
use plumbmark_tests::vector::unit;

#[test]
fn angles_that_agree_change_nothing_and_angles_that_do_not_forbid_the_reading() {
    let with_angles = |off_deg: f64| {
        let tail = |i: usize| {
            let [x, y, z] = unit(UPS[i]);
            let beta = y.asin().to_degrees() + off_deg;
            format!(",{beta:.1},{:.1}", (-x).atan2(z).to_degrees())
        };
        format!(
            "{NAMES},beta_deg,gamma_deg\n{}",
            six_poses(1, [0.0; 3], tail)
        )
    };
    let without = format!("{NAMES}\n{}", six_poses(1, [0.0; 3], |_| String::new()));
    let plain = studied("without_angles", &[("a.csv", &without)], browser());
    let agree = studied("angles_agree", &[("a.csv", &with_angles(0.0))], browser());
    assert_eq!((&plain.faults, &agree.faults), (&vec![], &vec![]));
    assert_eq!(csv(&plain.rows), csv(&agree.rows));
    let all = agree.rows.last().unwrap();
    assert_eq!((all.poses, all.poses_inside), (6, 6));
    let differ = studied("angles_differ", &[("a.csv", &with_angles(8.0))], browser());
    assert_eq!(differ.rows, []);
    assert_eq!(differ.faults[0].kind, Kind::NoReading);
    assert!(differ.faults[0].text.contains("channels_disagree"));
    let turned = Options {
        turns: 10,
        ..browser()
    };
    let agree = studied("angles_turned", &[("a.csv", &with_angles(0.0))], turned);
    let all = agree.rows.last().unwrap();
    assert!(all.summary.readings > 5 * plain.rows.last().unwrap().summary.readings);
    assert_eq!(all.poses_inside, 6);
}

#[test]
fn unit_and_sign_are_those_of_the_header() {
    let plain = format!("{NAMES}\n{}", six_poses(2, [0.0; 3], |_| String::new()));
    let per_mm_s2 = -1.0 / 1000.0 / G;
    let in_g = plain.lines().skip(1).map(|line| {
        let mut cells: Vec<_> = line.split(',').map(str::to_owned).collect();
        for cell in &mut cells[1..4] {
            *cell = format!("{:.12}", cell.parse::<f64>().unwrap() * per_mm_s2);
        }
        cells.join(",") + "\n"
    });
    let other = format!(
        "# unit: g\n# sign: -1\n{NAMES}\n{}",
        in_g.collect::<String>()
    );
    let first = studied("unit_mm_s2", &[("a.csv", &plain)], browser());
    let second = studied("unit_g", &[("a.csv", &other)], browser());
    assert_eq!(csv(&first.rows), csv(&second.rows));
    assert_eq!(first.rows.last().unwrap().poses_inside, 6);
}

#[test]
fn poses_come_from_labels_or_from_the_flag_or_from_core() {
    let poses = |names: &str, tail: &dyn Fn(usize) -> String| {
        let text = format!("{NAMES}{names}\n{}", six_poses(3, [0.0; 3], tail));
        let report = studied("poses", &[("a.csv", &text)], browser());
        assert_eq!(report.faults, []);
        let rows = report.rows.iter().filter(|r| r.level == "pose");
        rows.map(|r| r.pose.clone()).collect::<Vec<_>>()
    };
    assert_eq!(
        poses("", &|_| String::new()),
        ["0", "1", "2", "3", "4", "5"]
    );
    // The second and the fourth rest are said to be movement.
    let moved = |i: usize| format!(",{}", u8::from(i == 1 || i == 3));
    assert_eq!(poses(",moving", &moved), ["0", "1", "2"]);
    let label = |i: usize| {
        if i == 0 {
            ",".to_owned()
        } else {
            format!(",{}", 10 * (i / 2))
        }
    };
    assert_eq!(poses(",pose", &label), ["-", "0", "10", "20"]);
}

#[test]
fn rounded_values_are_read_as_they_are_and_not_turned() {
    let rows = six_poses(11, [0.0; 3], |_| String::new());
    let rounded = rows.lines().map(|line| {
        let mut cells: Vec<_> = line.split(',').map(str::to_owned).collect();
        for cell in &mut cells[1..4] {
            *cell = format!("{:.1}", cell.parse::<f64>().unwrap() / 1000.0);
        }
        cells.join(",") + "\n"
    });
    let head = format!("# unit: m/s2\n# rounding: browser\n{NAMES}\n");
    let trace = Trace::parse("a.csv", &(head + &rounded.collect::<String>())).unwrap();
    let plain = Trace::parse("a.csv", &format!("{NAMES}\n{rows}")).unwrap();
    let [first, second] = [(&trace, false), (&plain, true)].map(|(trace, round)| {
        let how = How {
            round,
            ..How::default()
        };
        run(trace, &spots(trace), &how).readings
    });
    assert!(first.len() > 100);
    assert_eq!(first, second);
    let text = format!("# unit: m/s2\n# rounding: browser\n{NAMES}\n0,0,0,9.8,0,0,1\n");
    let turned = Options {
        turns: 2,
        ..browser()
    };
    let report = studied("rounded_twice", &[("a.csv", &text)], turned);
    assert_eq!(report.faults[0].kind, Kind::RoundedTwice);
}
