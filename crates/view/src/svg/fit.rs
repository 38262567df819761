//! A scene's inches on the screen's pixels.

use crate::scene::{Mark, Scene};

/// Scale and place of a scene.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    scale: f64,
    left: f64,
    top: f64,
    /// Rightmost point of anything drawn, inches.
    rightmost: f64,
}

fn rightmost(mark: &Mark) -> f64 {
    match mark {
        Mark::Line { from, to, .. } | Mark::Dimension { from, to, .. } | Mark::Arrow { from, to, .. } => {
            from.0.max(to.0)
        }
        Mark::Shape { points, .. } => points.iter().map(|point| point.0).fold(f64::MIN, f64::max),
        Mark::Label { at, .. } | Mark::Words { from: at, .. } => at.0,
        // Nothing is drawn there.
        Mark::Pick { .. } => f64::MIN,
    }
}

fn to_tenth(pixels: f64) -> f64 {
    (pixels * 10.0).round() / 10.0
}

impl Fit {
    /// The scene whole and in the middle of a sheet of that many pixels, with an edge left free.
    pub fn new(scene: &Scene, (width, height): (f64, f64), edge: f64) -> Self {
        let (across, down) = ((width - 2.0 * edge).max(1.0), (height - 2.0 * edge).max(1.0));
        let scale = (across / scene.width.max(1e-6)).min(down / scene.height.max(1e-6));
        Self {
            scale,
            left: (width - scene.width * scale) / 2.0 - scene.left * scale,
            top: (height - scene.height * scale) / 2.0 - scene.top * scale,
            rightmost: scene.marks.iter().map(rightmost).fold(f64::MIN, f64::max),
        }
    }

    /// Whether nothing is drawn to the right of a point: there a figure has free paper.
    pub fn is_at_right_edge(self, point: (f64, f64)) -> bool {
        point.0 >= self.rightmost
    }

    /// A point of the scene in pixels.
    pub fn at(self, (x, y): (f64, f64)) -> (f64, f64) {
        (to_tenth(self.left + x * self.scale), to_tenth(self.top + y * self.scale))
    }
}

#[cfg(test)]
mod tests {
    use super::Fit;
    use crate::scene::Scene;

    #[test]
    fn a_scene_stands_whole_in_the_middle() {
        let scene = Scene { left: -50.0, top: 0.0, width: 100.0, height: 50.0, marks: Vec::new(), alt: String::new() };
        let fit = Fit::new(&scene, (220.0, 220.0), 10.0);
        assert_eq!(fit.at((-50.0, 0.0)), (10.0, 60.0));
        assert_eq!(fit.at((50.0, 50.0)), (210.0, 160.0));
    }
}
