//! What the lights show: pictures of five rows, and how long each of them stood.

use heapless::Deque;

/// Rows from the top; the tail end's column is the highest of five bits.
pub type Frame = [u8; 5];

/// Pictures remembered.
const MOST: usize = 48;

/// A picture and for how long it has been seen, ms.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stood {
    /// The picture.
    pub frame: Frame,
    /// Time, ms.
    pub ms: u32,
}

/// An eye on the lights.
pub struct Seen {
    rows: Frame,
    rows_seen: u8,
    pictures: Deque<Stood, MOST>,
}

impl Seen {
    /// Nothing yet.
    pub const NOTHING: Self = Self {
        rows: [0; 5],
        rows_seen: 0,
        pictures: Deque::new(),
    };

    /// A row is lit, and no other.
    pub fn light(&mut self, row: usize, lights: u8) {
        assert!(lights < 32, "a row has five lights");
        assert_eq!(row, usize::from(self.rows_seen) % 5, "rows are lit in turn");
        self.rows[row] = lights;
        self.rows_seen += 1;
        if self.rows_seen == 5 {
            self.rows_seen = 0;
            self.picture();
        }
    }

    fn picture(&mut self) {
        if let Some(last) = self
            .pictures
            .back_mut()
            .filter(|last| last.frame == self.rows)
        {
            last.ms += 10;
            return;
        }
        if self.pictures.is_full() {
            self.pictures.pop_front();
        }
        let stood = Stood {
            frame: self.rows,
            ms: 10,
        };
        assert!(
            self.pictures.push_back(stood).is_ok(),
            "there is room for it"
        );
    }

    /// The picture of the last five rows.
    pub fn now(&self) -> Frame {
        self.pictures.back().map_or([0; 5], |last| last.frame)
    }

    /// Forgets everything: the gauge starts.
    pub fn begin(&mut self) {
        *self = Self::NOTHING;
    }

    /// Forgets what was seen before the picture that stands.
    pub fn forget(&mut self) {
        let now = self.pictures.pop_back();
        self.pictures.clear();
        if let Some(now) = now {
            let begun = Stood { ms: 0, ..now };
            assert!(
                self.pictures.push_back(begun).is_ok(),
                "there is room for it"
            );
        }
    }

    /// What was seen, the oldest first.
    pub fn pictures(&self) -> impl Iterator<Item = Stood> + '_ {
        self.pictures.iter().copied()
    }
}
