//! Two buttons, without bounce: short and long presses of either or both.

/// Looks that a button must say the same for, 10 ms each: longer than contacts bounce.
const SETTLED: u8 = 3;
/// A press of so many looks is a long one.
const LONG: u16 = 80;

/// What was pressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Press {
    /// The button at the tail end, shortly.
    A,
    /// The button at the head end, shortly.
    B,
    /// Both shortly.
    Both,
    /// The first one, long.
    LongA,
    /// The second one, long.
    LongB,
    /// Both long.
    LongBoth,
}

/// One press at a time: it lasts until both buttons are free.
#[derive(Debug, Clone, Copy, Default)]
pub struct Buttons {
    settled: [bool; 2],
    differs: [u8; 2],
    touched: [bool; 2],
    looks: u16,
}

impl Buttons {
    /// One look, every 10 ms; `pressed` as the contacts say. A short press tells when it ends, a
    /// long one as soon as it is long.
    pub fn look(&mut self, pressed: [bool; 2]) -> Option<Press> {
        let each = self.settled.iter_mut().zip(&mut self.differs).zip(pressed);
        for ((settled, differs), now) in each {
            *differs = if now == *settled { 0 } else { *differs + 1 };
            if *differs >= SETTLED {
                (*settled, *differs) = (now, 0);
            }
        }
        if self.settled == [false; 2] {
            let was = (self.touched, self.looks < LONG);
            (self.touched, self.looks) = ([false; 2], 0);
            return match was {
                ([true, false], true) => Some(Press::A),
                ([false, true], true) => Some(Press::B),
                ([true, true], true) => Some(Press::Both),
                _ => None,
            };
        }
        for (touched, settled) in self.touched.iter_mut().zip(self.settled) {
            *touched |= settled;
        }
        self.looks = self.looks.saturating_add(1);
        match (self.looks == LONG, self.touched) {
            (true, [true, false]) => Some(Press::LongA),
            (true, [false, true]) => Some(Press::LongB),
            (true, [true, true]) => Some(Press::LongBoth),
            _ => None,
        }
    }
}
