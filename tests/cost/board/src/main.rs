//! Prints what each piece of work costs on the smallest core, one `name<TAB>number` a line.
#![no_std]
#![no_main]

mod counter;

use core::mem::size_of;
use core::panic::PanicInfo;
use cortex_m_rt::entry;
use cortex_m_semihosting::{debug, hprintln};
use cost_items::gauge::{CHECKS, Gauge};
use cost_items::rivals::{Attitude, Bare, BareMean, Fusion, Madgwick};
use cost_items::signal::{force_m_s2, rest};
use counter::Counter;

const ROUNDS: u32 = 20;

#[entry]
fn main() -> ! {
    let peripherals = cortex_m::Peripherals::take().expect("taken once");
    let mut counter = Counter::new(peripherals.SYST);
    let signal = rest();
    ruler(&mut counter);
    plumbmark(&mut counter, &signal);
    rival::<Madgwick>(&mut counter, "ahrs", &signal);
    rival::<Fusion>(&mut counter, "fusion", &signal);
    rival::<BareMean>(&mut counter, "mean", &signal);
    rival::<Bare>(&mut counter, "bare", &signal);
    debug::exit(debug::EXIT_SUCCESS);
    loop {}
}

fn say(name: &str, hundredths: u64) {
    hprintln!("{}\t{}.{:02}", name, hundredths / 100, hundredths % 100);
}

fn say_bytes(name: &str, bytes: usize) {
    hprintln!("{} bytes\t{}", name, bytes);
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
    say("eight nops", counter.hundredths(1000, &[0_u32; 60], eight));
    let pairs = [(0.7_f32, 1.3_f32), (-0.02, 0.9), (0.6, -0.4), (9.6, 0.31)];
    say("add", counter.hundredths(100, &pairs, |(a, b)| a + b));
    say("mul", counter.hundredths(100, &pairs, |(a, b)| a * b));
    say("div", counter.hundredths(100, &pairs, |(a, b)| a / b));
    say("sqrtf", counter.hundredths(100, &pairs, |(_, b)| libm::sqrtf(b.abs())));
    say("atan2f", counter.hundredths(100, &pairs, |(a, b)| libm::atan2f(a, b)));
}

fn plumbmark(counter: &mut Counter, signal: &[[i16; 3]]) {
    let mut gauge = Gauge::new();
    let push = |counts| gauge.push(counts).expect("at rest");
    say("plumbmark sample", counter.hundredths(ROUNDS, signal, push));
    let once = [()];
    let reading = counter.hundredths(ROUNDS, &once, |()| gauge.reading().is_ok());
    say("plumbmark reading", reading);
    let found = gauge.reading().expect("at rest");
    for (at, check) in CHECKS.into_iter().enumerate() {
        let verdict = counter.hundredths(ROUNDS, &once, |()| gauge.verdict(at, &found));
        hprintln!("# {:?} {:?}", check, gauge.verdict(at, &found).verdict);
        say(check.name(), verdict);
    }
    say_bytes("Gauge", size_of::<Gauge>());
    say_bytes("Window", size_of::<plumbmark::window::Window>());
    say_bytes("Fused", size_of::<plumbmark::fused::Fused>());
    say_bytes("Reading", size_of::<plumbmark::reading::Reading>());
    say_bytes("Outcome", size_of::<plumbmark::check::Outcome>());
    say_bytes("Limit", size_of::<plumbmark::limits::Limit>());
    say_bytes("LimitSet", size_of::<plumbmark::limits::LimitSet>());
    say_bytes("Live", size_of::<plumbmark::live::Live>());
}

fn rival<A: Attitude + Default>(counter: &mut Counter, name: &str, signal: &[[i16; 3]]) {
    let mut rival = A::default();
    let update = |counts| rival.update(force_m_s2(counts));
    let sample = counter.hundredths(ROUNDS, signal, update);
    let angles = counter.hundredths(ROUNDS, &[()], |()| rival.angles());
    hprintln!("{} sample\t{}.{:02}", name, sample / 100, sample % 100);
    hprintln!("{} angles\t{}.{:02}", name, angles / 100, angles % 100);
    say_bytes(name, size_of::<A>());
}

#[panic_handler]
fn panic(info: &PanicInfo<'_>) -> ! {
    hprintln!("{}", info);
    debug::exit(debug::EXIT_FAILURE);
    loop {}
}
