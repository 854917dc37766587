//! The gauge's line: written and read back without loss, refused when a byte has changed, and no
//! bytes at all that it panics on.

use crc::{CRC_32_ISO_HDLC, Crc};
use plumbmark::limits::{Basis, LimitSet};
use plumbmark::line::{FORMAT, LONGEST, LineError, Speaker, read, write};
use plumbmark::parts::Part;
use plumbmark::sensor::Sensor;
use plumbmark_tests::Draws;
use plumbmark_tests::laid::Laid;
use proptest::prelude::*;

/// A second implementation, whose catalogue has the published check values.
const SUM: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);
const COUNT_M_S2: f64 = 0.009_806_65;

fn speaker() -> Speaker {
    Speaker {
        gauge: 0x0C0F_FEE5,
        count: 42,
        software: "0.1.0".try_into().unwrap(),
    }
}

/// A case that gives a capture, and its line.
fn drawn(draws: &mut Draws) -> (Laid, plumbmark::direct::Taken, Vec<u8>) {
    loop {
        let laid = Laid::draw(draws, COUNT_M_S2, Sensor::unchecked(0.0231, 0.02));
        let placements = laid.placements(draws);
        if let Ok(taken) = laid.take(&placements) {
            let mut line = Vec::new();
            let (lines, surface_deg) = (&laid.limits.lines, laid.surface_deg());
            write(&speaker(), &taken, lines, surface_deg, &mut |b| {
                line.push(b)
            });
            return (laid, taken, line);
        }
    }
}

/// The line with other words and a CRC that fits them.
fn signed(words: &str) -> String {
    let body = format!("{words} ");
    format!("{body}{:08X}\r\n", SUM.checksum(body.as_bytes()))
}

/// The words of a line before its CRC.
fn words_of(line: &[u8]) -> Vec<String> {
    let text = std::str::from_utf8(line).unwrap().trim_end();
    let mut words: Vec<String> = text.split(' ').map(str::to_owned).collect();
    words.pop();
    words
}

#[test]
fn its_sum_is_the_published_one() {
    assert_eq!(SUM.algorithm.check, 0xCBF4_3926);
    assert_eq!(SUM.checksum(b"123456789"), 0xCBF4_3926);
    let (.., line) = drawn(&mut Draws::new(1));
    let text = std::str::from_utf8(&line).unwrap();
    assert_eq!(signed(&words_of(&line).join(" ")), text);
    assert_eq!(
        read(signed(&words_of(&line).join(" ")).as_bytes())
            .unwrap()
            .speaker,
        speaker()
    );
}

#[test]
fn it_comes_back_as_it_was_written() {
    let mut draws = Draws::new(2);
    let (mut longest, mut shortest) = (0, LONGEST);
    for _ in 0..3000 {
        let (laid, taken, line) = drawn(&mut draws);
        assert!(line.is_ascii() && line.ends_with(b"\r\n") && line.len() <= LONGEST);
        (longest, shortest) = (longest.max(line.len()), shortest.min(line.len()));
        let found = read(&line).unwrap_or_else(|e| panic!("{e}: {laid:?}"));
        assert_eq!(found.speaker, speaker());
        assert_eq!(found.taken, taken);
        assert_eq!(found.surface_deg, laid.surface_deg());
        let given = taken.outcomes(&laid.limits.lines, laid.surface_deg());
        for ((outcome, limit), shown) in given.iter().zip(&found.limits).zip(&found.shown) {
            let own = laid.limits.limit(outcome.check);
            assert_eq!((limit.low_deg, limit.high_deg), (own.low_deg, own.high_deg));
            assert_eq!(
                (limit.basis, limit.allowance_deg),
                (own.basis, own.allowance_deg)
            );
            assert_eq!((shown.verdict, shown.why), (outcome.verdict, outcome.why));
            let (Some(m), Some((value, u))) = (outcome.measured, shown.measured_cdeg) else {
                assert_eq!((outcome.measured, shown.measured_cdeg), (None, None));
                continue;
            };
            assert!((m.value_deg - value as f32 / 100.0).abs() <= 0.005_02);
            // Never better than it was measured.
            assert!((0.0..0.010_02).contains(&(u as f32 / 100.0 - m.u_deg + 1e-5)));
        }
        // Other limits' answers too, to the last bit.
        let job = LimitSet::trade_usage();
        let surface_deg = job.surface_deg(taken.placement.surface);
        let anew = found.taken.outcomes(&job.lines, surface_deg);
        assert_eq!(anew, taken.outcomes(&job.lines, surface_deg));
    }
    println!("3000 lines of {shortest} to {longest} bytes");
}

#[test]
fn a_changed_byte_is_noticed() {
    let mut draws = Draws::new(3);
    for _ in 0..20 {
        let (.., line) = drawn(&mut draws);
        for at in 0..line.len() {
            for change in [1, 2, 4, 8, 16, 32, 64, 128, 0x5A] {
                let mut bad = line.clone();
                bad[at] ^= change;
                assert!(
                    read(&bad).is_err(),
                    "{at} {}",
                    String::from_utf8_lossy(&bad)
                );
            }
            let mut short = line.clone();
            short.remove(at);
            // Its end may be LF alone, or be lost.
            assert!(read(&short).is_err() || at >= line.len() - 2);
        }
    }
}

#[test]
fn every_refusal_has_its_name() {
    let mut draws = Draws::new(4);
    let (_, taken, line) = loop {
        let found = drawn(&mut draws);
        if found.1.placement.checks.len() == 1 {
            break found;
        }
    };
    let words = words_of(&line);
    let with = |at: usize, word: &str| {
        let mut words = words.clone();
        words[at] = word.to_owned();
        signed(&words.join(" "))
    };
    let refused = |line: &str| read(line.as_bytes()).unwrap_err();
    assert!(read(signed(&words.join(" ")).as_bytes()).is_ok());
    assert_eq!(refused("hello"), LineError::NotALine);
    assert_eq!(refused(""), LineError::NotALine);
    assert_eq!(refused(&with(1, "2")), LineError::OtherVersion);
    assert_eq!(refused(FORMAT), LineError::OtherVersion);
    assert_eq!(
        refused(&String::from_utf8_lossy(&line).replace("0.1.0", "0.1.1")),
        LineError::Damaged
    );
    assert_eq!(
        refused(&signed(&words[..words.len() - 1].join(" "))),
        LineError::WordCount
    );
    assert_eq!(
        refused(&signed(&(words.join(" ") + " -"))),
        LineError::WordCount
    );
    for (at, word) in [
        (2, "c0ffee00"),
        (2, "123"),
        (3, "042"),
        (3, "4294967296"),
        (3, "-1"),
        (4, ""),
        (4, "1_0"),
        (4, "12345678901234567"),
        (5, "chimney"),
        (5, "-"),
        (9, "1.5"),
        (9, "+1.50"),
        (9, "99999999.00"),
        (11, "-"),
        (13, "photo"),
        (18, "2"),
    ] {
        assert_eq!(
            refused(&with(at, word)),
            LineError::UnknownWord,
            "{at} {word}"
        );
    }
    let other = if taken.placement.part == Some(Part::Pipe) {
        "metal_face"
    } else {
        "metal"
    };
    assert!(matches!(
        refused(&with(7, other)),
        LineError::NoSuchPlacement | LineError::UnknownWord
    ));
    assert_eq!(refused(&with(20, "59")), LineError::ImpossibleNumber);
    assert_eq!(
        refused(&with(
            11,
            if words[11] == "within" {
                "beyond"
            } else {
                "within"
            }
        )),
        LineError::OtherRules
    );
    // NaN, infinity, minus one, and an up vector of no length, in place of each number.
    let numbers = &words[21];
    for bits in ["7FC00000", "7F800000", "BF800000", "00000000"] {
        for at in (0..numbers.len()).step_by(8) {
            let mut changed = numbers.clone();
            changed.replace_range(at..at + 8, bits);
            let line = with(21, &changed);
            // A number that can be changes the answer, or is as good.
            let found = read(line.as_bytes());
            assert!(
                !bits.starts_with("7F") || found == Err(LineError::ImpossibleNumber),
                "{at} {bits}"
            );
        }
    }
    assert_eq!(
        refused(&with(21, &numbers[..numbers.len() - 8])),
        LineError::WordCount
    );
    assert_eq!(
        refused(&with(21, &format!("{numbers}00000000"))),
        LineError::WordCount
    );
    let names: std::collections::BTreeSet<_> = LineError::ALL.map(LineError::name).into();
    assert_eq!(names.len(), LineError::ALL.len());
}

/// The words of a line are those of reports.
#[test]
fn its_words_are_those_of_reports() {
    let name = |value: &dyn erased::Named| value.json();
    let mut seen = std::collections::BTreeSet::new();
    let mut draws = Draws::new(5);
    for _ in 0..400 {
        let (_, taken, line) = drawn(&mut draws);
        let words = words_of(&line);
        let p = taken.placement;
        assert_eq!(words[5], name(&p.part.unwrap()));
        assert_eq!(words[6], name(&p.hold));
        assert_eq!(words[7], name(&p.surface));
        let found = read(&line).unwrap();
        for (i, (check, shown)) in p.checks.iter().zip(&found.shown).enumerate() {
            let at = 8 + 11 * i;
            assert_eq!(words[at], name(check));
            assert_eq!(words[at + 3], name(&shown.verdict));
            assert_eq!(
                words[at + 4],
                shown.why.map_or("-".into(), |why| name(&why))
            );
            assert_eq!(
                words[at + 5],
                taken.end_told(*check).map_or("-".into(), |e| name(&e))
            );
            assert_eq!(words[at + 6], name(&found.limits[i].basis));
            seen.extend(words[at + 3..=at + 6].iter().cloned());
        }
        assert_eq!(words[8 + 11 * p.checks.len()], name(&taken.zero_by));
        seen.insert(name(&taken.zero_by));
    }
    for basis in Basis::ALL {
        assert!(seen.contains(&name(&basis)));
    }
    assert!(seen.len() >= 16, "{seen:?}");
}

mod erased {
    /// A value's name as serde gives it.
    pub trait Named {
        fn json(&self) -> String;
    }

    impl<T: serde::Serialize> Named for T {
        fn json(&self) -> String {
            serde_json::to_value(self)
                .unwrap()
                .as_str()
                .unwrap()
                .to_owned()
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(20_000))]

    #[test]
    fn no_bytes_panic(bytes in proptest::collection::vec(any::<u8>(), 0..700)) {
        prop_assert!(read(&bytes).is_err());
    }

    /// Words of all kinds in a line whose sum fits.
    #[test]
    fn no_words_panic(seed in any::<u64>(), at in 0..22_usize, word in "[ -~]{0,12}|[0-9A-F]{8}") {
        let (.., line) = drawn(&mut Draws::new(seed));
        let mut words = words_of(&line);
        if let Some(old) = words.get_mut(at) {
            *old = word;
        }
        if let Ok(found) = read(signed(&words.join(" ")).as_bytes()) {
            for (shown, &check) in found.shown.iter().zip(found.taken.placement.checks) {
                prop_assert!(check.part() == found.taken.placement.part.unwrap());
                prop_assert!(shown.measured_cdeg.is_none_or(|(_, u)| u > 0));
            }
        }
    }
}
