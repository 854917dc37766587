//! The heater against the loss.

use super::{NONE, Named, near, told, value, verdict, work};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use proptest::prelude::*;

const SHEET: Sheet = Sheet::HeaterSize;

fn heater(loss_w: f64, loss_is: f64, full_w: f64) -> [Named; 6] {
    [
        ("loss_w", loss_w),
        ("loss_is", loss_is),
        ("full_w", full_w),
        ("lowest_w", 900.0),
        ("altitude_m", 600.0),
        ("altitude_share", 0.1),
    ]
}

#[test]
fn power_to_spare() {
    let worked = work(SHEET, &heater(1500.0, 0.0, 3000.0), &[]);
    near(value(SHEET, &worked, "available_w"), 2700.0, 1e-12);
    near(value(SHEET, &worked, "spare_w"), 1200.0, 1e-12);
    near(value(SHEET, &worked, "lowest_ratio"), 0.54, 1e-12);
    // U: 2/√3 of 0.9 · 10 % of 3000 W and 20 % of 1500 W.
    let u = 2.0 * ((270f64.powi(2) + 300f64.powi(2)) / 3.0).sqrt();
    near(worked.result(1).unwrap().u, u, 1e-9);
    assert_eq!(verdict(SHEET, &worked, "spare_w", NONE), Verdict::Within);
    let small = work(SHEET, &heater(3600.0, 0.0, 2200.0), &[]);
    assert_eq!(verdict(SHEET, &small, "spare_w", NONE), Verdict::Beyond);
}

#[test]
fn the_height_is_the_manuals() {
    let worked = work(SHEET, &heater(1500.0, 0.0, 3000.0), &[]);
    assert_eq!(
        verdict(SHEET, &worked, "altitude_m", 1500.0),
        Verdict::Within
    );
    assert_eq!(
        verdict(SHEET, &worked, "altitude_m", 620.0),
        Verdict::NotProven
    );
    assert_eq!(
        verdict(SHEET, &worked, "altitude_m", 500.0),
        Verdict::Beyond
    );
    assert_eq!(
        verdict(SHEET, &worked, "altitude_m", NONE),
        Verdict::NotProven
    );
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_lower_end_of_the_loss_never_proves_enough(
        loss in 10.0..9000.0f64, full in 100.0..50_000.0f64, half in 0.0..500.0f64,
    ) {
        let x = told(SHEET, &heater(loss, 1.0, full), &[]);
        let worked = SHEET.work(&x, &[half, NONE, half, NONE, NONE, NONE]).unwrap();
        prop_assert!(value(SHEET, &worked, "spare_w").is_nan());
        prop_assert_eq!(verdict(SHEET, &worked, "spare_w", NONE), Verdict::None);
        prop_assert_ne!(verdict(SHEET, &worked, "spare_at_most_w", NONE), Verdict::Within);
    }

    /// Doing what is told settles it: a heater with so much more heat.
    #[test]
    fn so_much_more_is_enough(loss in 500.0..6000.0f64, share in 0.0..1.3f64, lost in 0.0..0.3f64) {
        let told = |full: f64| {
            let mut named = heater(loss, 0.0, full);
            named[5].1 = lost;
            let worked = work(SHEET, &named, &[]);
            let check = worked.check(0).unwrap();
            worked.judged(&check, NONE, NONE).unwrap()
        };
        let full = (loss * share).max(100.0);
        let before = told(full);
        if before.verdict != Verdict::Within {
            prop_assert!(before.change > 0.0);
            let after = told(full + before.change / (1.0 - lost));
            prop_assert_eq!(after.verdict, Verdict::Within);
        }
    }
}
