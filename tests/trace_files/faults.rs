//! What a bad file is told, and that it keeps no other from running.

use crate::made::{NAMES, folder, six_poses};
use plumbmark_tests::traces::{Kind, Trace};
use std::process::Command;

#[test]
fn a_bad_trace_is_told_file_line_column_and_name() {
    let good = "0,0,0,9807,0,0,1\n17,0,0,9807,0,0,1\n";
    let named = |names: &str, rows: &str| format!("# a comment: free\n{names}\n{rows}");
    let cases = [
        (String::new(), Kind::Empty, None, None),
        (named(NAMES, ""), Kind::Empty, None, None),
        (
            format!("# units: g\n{NAMES}\n{good}"),
            Kind::UnknownKey,
            Some(1),
            Some("units"),
        ),
        (
            format!("# unit: ft\n{NAMES}\n{good}"),
            Kind::BadKey,
            Some(1),
            Some("unit"),
        ),
        (
            format!("{NAMES}\n# sign: -1\n{good}"),
            Kind::BadKey,
            Some(2),
            Some("sign"),
        ),
        (
            named("t_ms,ax,ay,ux,uy,uz", good),
            Kind::MissingColumn,
            Some(2),
            Some("az"),
        ),
        (
            named("t_ms;ax;ay;az", good),
            Kind::MissingColumn,
            Some(2),
            Some("t_ms"),
        ),
        (
            named("t_ms,ax,ay,az,ux,uy,beta", good),
            Kind::BadColumn,
            Some(2),
            Some("beta"),
        ),
        (
            named("t_ms,ax,ay,az,ux,uy,ux", good),
            Kind::BadColumn,
            Some(2),
            Some("ux"),
        ),
        (named(NAMES, "0,0,0,9807\n"), Kind::Cells, Some(3), None),
        (
            named(NAMES, "0,0,,9807,0,0,1\n"),
            Kind::BadNumber,
            Some(3),
            Some("ay"),
        ),
        (
            named(NAMES, "0,0,0,NaN,0,0,1\n"),
            Kind::BadNumber,
            Some(3),
            Some("az"),
        ),
        (
            named(NAMES, "0,0,0,9807,0,0,0\n"),
            Kind::BadNumber,
            Some(3),
            Some("ux"),
        ),
        (
            named(NAMES, "0,0,0,9807,0,,1\n"),
            Kind::Incomplete,
            Some(3),
            Some("uy"),
        ),
        (
            named(&format!("{NAMES},moving"), "0,0,0,9807,0,0,1,2\n"),
            Kind::BadNumber,
            Some(3),
            Some("moving"),
        ),
        (
            named(&format!("{NAMES},pose"), "0,0,0,9807,0,0,1,a\n"),
            Kind::BadNumber,
            Some(3),
            Some("pose"),
        ),
        (
            named(NAMES, &format!("{good}16,0,0,9807,0,0,1\n")),
            Kind::TimeBackward,
            Some(5),
            Some("t_ms"),
        ),
        (
            named(NAMES, "0,0,0,9807,,,\n"),
            Kind::NoReference,
            None,
            None,
        ),
        (
            named("t_ms,ax,ay,az", "0,0,0,9807\n"),
            Kind::NoReference,
            None,
            None,
        ),
        (
            format!("# rounding: browser\n{NAMES}\n{good}"),
            Kind::NotRounded,
            Some(3),
            Some("az"),
        ),
    ];
    for (text, kind, line, column) in cases {
        let fault = Trace::parse("bad.csv", &text).unwrap_err();
        let found = (fault.kind, fault.line, fault.column.as_deref());
        assert_eq!(found, (kind, line, column), "{text}");
        let said = fault.to_string();
        assert!(
            said.starts_with("bad.csv") && said.contains(kind.name()),
            "{said}"
        );
    }
}

#[test]
fn the_other_files_of_a_folder_still_run_and_the_command_fails() {
    let good = format!("{NAMES}\n{}", six_poses(10, [0.0; 3], |_| String::new()));
    let wrong_unit = format!("# unit: m/s2\n{good}");
    let files = [
        ("a.csv", "t_ms\n"),
        ("b.csv", &good),
        ("c.csv", &wrong_unit),
        ("d.txt", ""),
    ];
    let mut command = Command::new(env!("CARGO_BIN_EXE_traces"));
    let out = command.arg(folder("mixed", &files)).output().unwrap();
    assert_eq!(out.status.code(), Some(1));
    let [out, said] = [out.stdout, out.stderr].map(|text| String::from_utf8(text).unwrap());
    assert!(out.contains("b.csv") && !out.contains("a.csv"), "{out}");
    let said: Vec<_> = said.lines().collect();
    assert_eq!(said.len(), 2);
    assert!(
        said[0].starts_with("a.csv, line 1, ax: missing_column: "),
        "{said:?}"
    );
    assert!(said[1].starts_with("c.csv: no_reading: ") && said[1].contains("not_gravity"));
    let mut command = Command::new(env!("CARGO_BIN_EXE_traces"));
    assert_eq!(
        command.arg("--trun").output().unwrap().status.code(),
        Some(2)
    );
}
