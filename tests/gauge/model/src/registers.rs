//! The registers of the accelerometer that a reading needs, and those of the magnetometer that its
//! driver writes.

pub(crate) const STATUS_AUX: u8 = 0x07;
pub(crate) const OUT_TEMP_L: u8 = 0x0c;
pub(crate) const OUT_TEMP_H: u8 = 0x0d;
pub(crate) const WHO_AM_I: u8 = 0x0f;
pub(crate) const TEMP_CFG: u8 = 0x1f;
pub(crate) const CTRL_1: u8 = 0x20;
pub(crate) const CTRL_6: u8 = 0x25;
pub(crate) const STATUS: u8 = 0x27;
pub(crate) const OUT_X_L: u8 = 0x28;
pub(crate) const OUT_Z_H: u8 = 0x2d;
/// Magnetometer: identity and the three settings.
pub(crate) const WHO_AM_I_M: u8 = 0x4f;
pub(crate) const CFG_A_M: u8 = 0x60;
pub(crate) const CFG_C_M: u8 = 0x62;

/// Identity of the accelerometer, and of the magnetometer.
pub(crate) const IDENTITY: u8 = 0x33;
pub(crate) const IDENTITY_M: u8 = 0x40;

/// CTRL_REG1_A: low power.
const LPEN: u8 = 1 << 3;
/// CTRL_REG4_A: high resolution.
const HR: u8 = 1 << 3;
/// STATUS_REG_A: a new set of data, and one that was overwritten unread.
const ZYXDA: u8 = 0x0f;
const ZYXOR: u8 = 0xf0;
/// STATUS_REG_AUX_A: a new temperature.
const TDA: u8 = 1 << 2;
/// TEMP_CFG_REG_A: both bits switch the temperature sensor on.
const TEMP_EN: u8 = 0xc0;

#[derive(Debug, Clone)]
pub(crate) struct Registers {
    temp_cfg: u8,
    /// CTRL_REG1_A to CTRL_REG6_A.
    control: [u8; 6],
    status: u8,
    /// What the output registers hold, left-justified.
    out: [i16; 3],
    magnetometer: [u8; 3],
}

impl Registers {
    /// Power-down, all axes enabled, low resolution.
    pub(crate) const AT_POWER_ON: Self = Self {
        temp_cfg: 0,
        control: [0x07, 0, 0, 0, 0, 0],
        status: 0,
        out: [0; 3],
        magnetometer: [0x03, 0, 0],
    };

    /// Time between samples, µs; `None` in power-down. Table "Data rate configuration".
    pub(crate) fn period_us(&self) -> Option<u32> {
        let [control_1, ..] = self.control;
        Some(match (control_1 >> 4, control_1 & LPEN != 0) {
            (1, _) => 1_000_000,
            (2, _) => 100_000,
            (3, _) => 40_000,
            (4, _) => 20_000,
            (5, _) => 10_000,
            (6, _) => 5_000,
            (7, _) => 2_500,
            (8, true) => 617,
            (9, true) => 186,
            (9, false) => 744,
            _ => return None,
        })
    }

    /// Bits of a sample: 12 at high resolution, 10, or 8 at low power. Table "Operating modes".
    pub(crate) fn bits(&self) -> u32 {
        let [control_1, _, _, control_4, ..] = self.control;
        if control_4 & HR != 0 {
            12
        } else if control_1 & LPEN != 0 {
            8
        } else {
            10
        }
    }

    /// Size of a count, mg. Table 3, "Linear acceleration sensitivity" (values from memory). `None`
    /// where high resolution and low power are both asked for, which is not allowed.
    pub(crate) fn step_mg(&self) -> Option<f32> {
        let [control_1, _, _, control_4, ..] = self.control;
        let scale = usize::from(control_4 >> 4 & 0b11);
        let of_scale = match (control_4 & HR != 0, control_1 & LPEN != 0) {
            (true, false) => [0.98, 1.95, 3.9, 11.72],
            (false, false) => [3.9, 7.82, 15.63, 46.9],
            (false, true) => [15.63, 31.26, 62.52, 187.58],
            (true, true) => return None,
        };
        Some(of_scale[scale])
    }

    /// What an axis says, in counts.
    pub(crate) fn axis(&self, axis: usize) -> i16 {
        self.out[axis] >> (16 - self.bits())
    }

    /// A new sample, in counts; an axis that is switched off says zero.
    pub(crate) fn put(&mut self, counts: [i16; 3]) {
        let shift = 16 - self.bits();
        let [enabled, ..] = self.control;
        for (axis, (out, counts)) in self.out.iter_mut().zip(counts).enumerate() {
            *out = if enabled >> axis & 1 == 1 {
                counts << shift
            } else {
                0
            };
        }
        self.ready();
    }

    /// Data is ready; over what nobody read.
    pub(crate) fn ready(&mut self) {
        let unread = self.status & ZYXDA != 0;
        self.status |= if unread { ZYXDA | ZYXOR } else { ZYXDA };
    }

    pub(crate) fn read(&mut self, register: u8) -> u8 {
        match register {
            STATUS_AUX if self.temp_cfg & TEMP_EN == TEMP_EN => TDA,
            // 25 °C.
            OUT_TEMP_L | OUT_TEMP_H => 0,
            WHO_AM_I => IDENTITY,
            TEMP_CFG => self.temp_cfg,
            CTRL_1..=CTRL_6 => self.control[usize::from(register - CTRL_1)],
            STATUS => self.status,
            OUT_X_L..=OUT_Z_H => {
                if register == OUT_Z_H {
                    self.status = 0;
                }
                let at = usize::from(register - OUT_X_L);
                self.out[at / 2].to_le_bytes()[at % 2]
            }
            _ => 0,
        }
    }

    pub(crate) fn write(&mut self, register: u8, value: u8) {
        match register {
            TEMP_CFG => self.temp_cfg = value,
            CTRL_1..=CTRL_6 => self.control[usize::from(register - CTRL_1)] = value,
            // The others are read-only, or no reading needs them.
            _ => {}
        }
    }

    pub(crate) fn read_magnetometer(&self, register: u8) -> u8 {
        match register {
            WHO_AM_I_M => IDENTITY_M,
            CFG_A_M..=CFG_C_M => self.magnetometer[usize::from(register - CFG_A_M)],
            _ => 0,
        }
    }

    pub(crate) fn write_magnetometer(&mut self, register: u8, value: u8) {
        if (CFG_A_M..=CFG_C_M).contains(&register) {
            self.magnetometer[usize::from(register - CFG_A_M)] = value;
        }
    }
}
