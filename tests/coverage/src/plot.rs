//! Each channel's gated cells as a drawing that black and white can print: line and marker tell them
//! apart.

use crate::case::{Case, Channel, Placing};
use crate::cases::{HOLDS_DEG, SIGMAS_STEPS};
use crate::row::Row;
use plotters::chart::SeriesLabelPosition;
use plotters::coord::Shift;
use plotters::prelude::*;
use std::error::Error;
use std::ops::Range;
use std::path::Path;

type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;
type Figure = fn(&Row) -> f64;

/// What a panel shows of a row, and the lines it must stay between.
struct Panel {
    title: &'static str,
    figure: Figure,
    range: Range<f64>,
    gates: &'static [f64],
    /// The panel beside it has the same lines.
    has_legend: bool,
}

const PANELS: [Panel; 2] = [
    Panel {
        title: "truths inside y ± U, %",
        figure: |row| 100.0 * row.inside as f64 / row.read as f64,
        range: 94.0..100.0,
        gates: &[95.0],
        has_legend: true,
    },
    Panel {
        title: "mean U / 95th percentile of |error|",
        figure: Row::ratio,
        range: 0.9..1.6,
        gates: &[1.0, 1.5],
        has_legend: false,
    },
];

/// Draws coverage and ratio of the gated rows over σ/q: one line of panels for each placing.
///
/// # Errors
/// Where the file can't be written.
pub fn draw(path: &Path, rows: &[Row]) -> Result<(), Box<dyn Error>> {
    let size = (1000, 360 * Placing::ALL.len() as u32);
    let root = SVGBackend::new(path, size).into_drawing_area();
    root.fill(&WHITE)?;
    let areas = root.split_evenly((Placing::ALL.len(), PANELS.len()));
    for (placing, line) in Placing::ALL.into_iter().zip(areas.chunks(PANELS.len())) {
        for (panel, area) in PANELS.iter().zip(line) {
            draw_panel(area, panel, placing, rows)?;
        }
    }
    root.present()?;
    Ok(())
}

fn draw_panel(
    area: &Area<'_>,
    panel: &Panel,
    placing: Placing,
    rows: &[Row],
) -> Result<(), Box<dyn Error>> {
    let last = SIGMAS_STEPS.len() as f64 - 1.0;
    let mut chart = ChartBuilder::on(area)
        .caption(
            format!("{}: {}", placing.name(), panel.title),
            ("sans-serif", 16),
        )
        .margin(10)
        .x_label_area_size(36)
        .y_label_area_size(40)
        .build_cartesian_2d(-0.3..last + 0.3, panel.range.clone())?;
    chart
        .configure_mesh()
        .disable_x_mesh()
        .light_line_style(TRANSPARENT)
        .x_desc("σ/q")
        .x_labels(SIGMAS_STEPS.len() + 2)
        .x_label_formatter(&|x| {
            let whole = (x - x.round()).abs() < 1e-6;
            let sigma = SIGMAS_STEPS
                .get(x.round() as usize)
                .filter(|_| whole && *x > -0.1);
            sigma.map_or_else(String::new, f64::to_string)
        })
        .draw()?;
    for gate in panel.gates {
        chart.draw_series(LineSeries::new(
            [(-0.3, *gate), (last + 0.3, *gate)],
            BLACK.stroke_width(2),
        ))?;
    }
    for channel in [Channel::Acceleration, Channel::Orientation] {
        for (marker, hold) in HOLDS_DEG.into_iter().enumerate() {
            let points: Vec<(f64, f64)> = SIGMAS_STEPS
                .into_iter()
                .enumerate()
                .filter_map(|(i, sigma)| {
                    let key = Case::nominal(placing, channel, sigma, hold).key();
                    let row = rows.iter().find(|r| r.key == key)?;
                    Some((i as f64, (panel.figure)(row)))
                })
                .collect();
            let (size, gap) = match channel {
                Channel::Acceleration => (12, 0),
                _ => (3, 4),
            };
            let line = points.clone().into_iter();
            chart.draw_series(DashedLineSeries::new(line, size, gap, BLACK.into()))?;
            chart
                .draw_series(points.into_iter().map(|p| mark(marker, p)))?
                .label(format!("{}, hold {hold}°", channel.name()))
                .legend(move |(x, y)| {
                    // Whole or broken beside the marker, as the line itself.
                    let gap = if gap == 0 { 0 } else { 5 };
                    EmptyElement::at((x, y))
                        + mark(marker, (12, 0))
                        + PathElement::new([(0, 0), (8 - gap, 0)], BLACK)
                        + PathElement::new([(16 + gap, 0), (24, 0)], BLACK)
                });
        }
    }
    if panel.has_legend {
        chart
            .configure_series_labels()
            .position(SeriesLabelPosition::LowerRight)
            .background_style(WHITE)
            .border_style(BLACK)
            .draw()?;
    }
    Ok(())
}

/// A marker for each hold.
fn mark<'a, C>(kind: usize, at: C) -> DynElement<'static, SVGBackend<'a>, C>
where
    C: Clone + 'static,
{
    match kind {
        0 => Circle::new(at, 4, BLACK.filled()).into_dyn(),
        1 => TriangleMarker::new(at, 5, BLACK.filled()).into_dyn(),
        _ => Cross::new(at, 4, BLACK.stroke_width(2)).into_dyn(),
    }
}
