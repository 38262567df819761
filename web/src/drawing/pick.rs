//! Where a thumb meets the drawing: wide, unseen, over everything else.

use leptos::prelude::*;
use view::scene::{FieldId, Mark, Scene};

use super::fit::Fit;
use super::shape::corners;

/// The places that bring an input to hand. Dimensions lie over shapes: they are thinner.
pub fn picks(scene: &Scene, fit: Fit, pick: Callback<FieldId>) -> AnyView {
    let shapes = scene.marks.iter().filter_map(|mark| match mark {
        Mark::Shape { points, field: Some(field), .. } => {
            let field = *field;
            let points = corners(points, fit);
            Some(
                view! { <polygon class="pick" data-field=field points=points on:click=move |_| pick.run(field) /> }
                    .into_any(),
            )
        }
        _ => None,
    });
    let dimensions = scene.marks.iter().filter_map(|mark| match mark {
        Mark::Dimension { from, to, field: Some(field), .. } => {
            let field = *field;
            let (from, to) = (fit.at(*from), fit.at(*to));
            Some(
                view! {
                    <line class="pick" data-field=field x1=from.0 y1=from.1 x2=to.0 y2=to.1 on:click=move |_| pick.run(field) />
                }
                .into_any(),
            )
        }
        _ => None,
    });
    shapes.chain(dimensions).collect_view().into_any()
}
