//! Prints what each piece of work costs on the smallest core, one `name<TAB>number` a line.
#![no_std]
#![no_main]

mod counter;

use core::hint::black_box;
use core::mem::size_of;
use core::panic::PanicInfo;
use cortex_m_rt::entry;
use cortex_m_semihosting::{debug, hprintln};
use cost_items::gauge::{CHECKS, Gauge};
use cost_items::rivals::{Attitude, Bare, BareMean, Fusion, Madgwick};
use cost_items::signal::{BATCH_HZ, WINDOW, force_m_s2, rest};
use counter::Counter;
use plumbmark::{decision::Verdict, limits::LimitSet, live::Live, window::Window};

const ROUNDS: u32 = 20;

#[entry]
fn main() -> ! {
    let peripherals = cortex_m::Peripherals::take().expect("taken once");
    let mut counter = Counter::new(peripherals.SYST);
    let signal = rest();
    ruler(&mut counter);
    gauge(&mut counter, &signal);
    rival::<BareMean>(&mut counter, &signal);
    rival::<Bare>(&mut counter, &signal);
    rival::<Madgwick>(&mut counter, &signal);
    rival::<Fusion>(&mut counter, &signal);
    debug::exit(debug::EXIT_SUCCESS);
    unreachable!("the machine has ended");
}

fn say(who: &str, what: &str, hundredths: u64) {
    hprintln!(
        "{} {}\t{}.{:02}",
        who,
        what,
        hundredths / 100,
        hundredths % 100
    );
}

/// What is done in a second, hundredths of instructions each.
struct Work {
    sample: u64,
    still: u64,
    live: u64,
    capture: u64,
    /// A live answer of everything that a capture keeps.
    full_live: u64,
}

/// Each piece of work, and one sample's share of a second that has one capture: with stillness
/// at each batch and one live answer, with neither, with a full live answer at each batch.
fn say_all(who: &str, work: &Work, bytes: usize) {
    let Work {
        sample,
        still,
        live,
        capture,
        full_live,
    } = *work;
    let batches = u64::from(BATCH_HZ);
    let share = |of_second: u64| sample + of_second / WINDOW as u64;
    say(who, "sample", sample);
    say(who, "still", still);
    say(who, "live", live);
    say(who, "capture", capture);
    say(who, "share", share(batches * still + live + capture));
    say(who, "share without live", share(capture));
    say(
        who,
        "share with full live",
        share(batches * full_live + capture),
    );
    hprintln!("{} bytes\t{}", who, bytes);
}

/// What is known beforehand: eight `nop` are eight instructions.
fn ruler(counter: &mut Counter) {
    use cortex_m::asm::nop;
    let eight = |_| {
        nop();
        nop();
        nop();
        nop();
        nop();
        nop();
        nop();
        nop();
    };
    say(
        "ruler",
        "8 nop",
        counter.hundredths(1000, &[0_u32; 60], eight),
    );
    let pairs = [(0.7_f32, 1.3_f32), (-0.02, 0.9), (0.6, -0.4), (9.6, 0.31)];
    say(
        "ruler",
        "add",
        counter.hundredths(100, &pairs, |(a, b)| a + b),
    );
    say(
        "ruler",
        "mul",
        counter.hundredths(100, &pairs, |(a, b)| a * b),
    );
    say(
        "ruler",
        "div",
        counter.hundredths(100, &pairs, |(a, b)| a / b),
    );
    say(
        "ruler",
        "sqrtf",
        counter.hundredths(100, &pairs, |(_, b)| libm::sqrtf(b.abs())),
    );
    say(
        "ruler",
        "atan2f",
        counter.hundredths(100, &pairs, |(a, b)| libm::atan2f(a, b)),
    );
}

fn gauge(counter: &mut Counter, signal: &[[i16; 3]]) {
    let mut gauge = Gauge::new();
    let push = |counts| gauge.push(counts).expect("at rest");
    let sample = counter.hundredths(ROUNDS, signal, push);
    let once = [()];
    let up = counter.hundredths(ROUNDS, &once, |()| gauge.up());
    say("plumbmark", "up", up);
    let found = gauge.up().expect("at rest");
    for (at, check) in CHECKS.into_iter().enumerate() {
        let light = counter.hundredths(ROUNDS, &once, |()| gauge.light(at, &found));
        hprintln!("{} light\t{}", check.name(), light / 100);
        let verdict = counter.hundredths(ROUNDS, &once, |()| gauge.verdict(at, &found));
        say("plumbmark", check.name(), verdict);
        assert_ne!(gauge.verdict(at, &found).verdict, Verdict::None);
    }
    let work = Work {
        sample,
        still: counter.hundredths(ROUNDS, &once, |()| gauge.rests()),
        live: counter.hundredths(ROUNDS, &once, |()| gauge.lights()),
        capture: counter.hundredths(ROUNDS, &once, |()| gauge.verdicts::<3>()),
        full_live: counter.hundredths(ROUNDS, &once, |()| gauge.verdicts::<2>()),
    };
    say_all("plumbmark", &work, size_of::<Gauge>());
    hprintln!("Window bytes\t{}", size_of::<Window>());
    hprintln!("LimitSet bytes\t{}", size_of::<LimitSet>());
    hprintln!("Live bytes\t{}", size_of::<Live>());
}

fn rival<A: Attitude>(counter: &mut Counter, signal: &[[i16; 3]]) {
    let mut rival = A::default();
    // Looked at after each sample, so that none is left out.
    let update = |counts| black_box(&mut rival).update(force_m_s2(counts));
    let sample = counter.hundredths(ROUNDS, signal, update);
    let angles = counter.hundredths(ROUNDS, &[()], |()| rival.angles());
    let work = Work {
        sample,
        still: 0,
        live: angles,
        capture: angles,
        full_live: angles,
    };
    say_all(A::NAME, &work, size_of::<A>());
}

#[panic_handler]
fn panic(info: &PanicInfo<'_>) -> ! {
    hprintln!("{}", info);
    loop {
        debug::exit(debug::EXIT_FAILURE);
    }
}
