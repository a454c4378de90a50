//! Distances from a photograph: the picture is shown here and goes nowhere; what is asked are the places marked on it.

use fitup_view::{Entry, Mark, Now, PaperSize, Photo, PhotoShown, Units};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{CanvasRenderingContext2d, Element, File, HtmlCanvasElement, HtmlInputElement, ImageBitmap};
use yew::prelude::*;

use crate::ctx::{Ctx, use_ctx};
use crate::hooks::use_room;
use crate::state::Action;
use crate::views::whole::switch::switch;

/// Corners of the sheet, which are marked first.
const CORNERS: usize = 4;

/// The picture is laid out with so many pixels at most; the magnifier has them all.
const MOST_PIXELS: u32 = 1600;

/// Width and height of the magnifier's canvas, pixels.
const MAGNIFIER: u32 = 480;

/// How wide the picture is taken to be shown while that is not known, CSS pixels.
const MIDDLE: f64 = 360.0;

/// How far Shift and an arrow key move a mark, in pixels of the magnifier.
const STRIDE: f64 = 10.0;

#[derive(Properties, PartialEq)]
pub struct PhotoEntryProps {
    /// What is measured.
    pub now: Now,
    /// What the marks come to.
    pub shown: PhotoShown,
    /// What was marked on this port.
    pub marked: Option<Photo>,
    /// How much was entered so far.
    pub taken: usize,
    /// The unit that a number without one is in.
    pub unit: Units,
    /// Takes what is found.
    pub enter: Callback<Entry>,
}

/// What sort of sheet it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Sheet {
    A4,
    Letter,
    Own,
}

/// The picture, its marks, and what they come to.
#[component]
pub fn PhotoEntry(props: &PhotoEntryProps) -> Html {
    let ctx = use_ctx();
    let picture = use_state(|| None::<ImageBitmap>);
    let is_unreadable = use_state(|| false);
    {
        // What was entered is done with, and so is the picture of another port.
        let (picture, act) = (picture.setter(), ctx.act.clone());
        use_effect_with((props.now.at.item.clone(), props.now.at.port.clone(), props.taken), move |_| {
            picture.set(None);
            act.emit(Action::Mark(None));
        });
    }
    let opened = {
        let (ctx, picture, is_unreadable, at) = (ctx.clone(), picture.setter(), is_unreadable.setter(), &props.now.at);
        let at = at.clone();
        Callback::from(move |event: Event| {
            let Some(input) = event.target_dyn_into::<HtmlInputElement>() else { return };
            let file = input.files().and_then(|files| files.get(0));
            input.set_value("");
            let (ctx, picture, is_unreadable, at) = (ctx.clone(), picture.clone(), is_unreadable.clone(), at.clone());
            spawn_local(async move {
                let Some(file) = file else { return };
                let read = bitmap_of(&file).await;
                is_unreadable.set(read.is_err());
                let Ok(bitmap) = read else { return };
                let size = (f64::from(bitmap.width()), f64::from(bitmap.height()));
                picture.set(Some(bitmap));
                ctx.act(Action::Mark(Some(Photo { at, size, ..Photo::default() })));
            });
        })
    };
    let open = html! {
        <label class="button photo-file">
            <input class="unseen" type="file" accept="image/*" onchange={opened} />
            { ctx.text("ui-photo-open") }
        </label>
    };
    if let Some((picture, photo)) = (*picture).clone().zip(props.marked.clone()) {
        let (shown, unit, enter) = (props.shown.clone(), props.unit, props.enter.clone());
        return html! { <Board {picture} {photo} {shown} {unit} {enter} {open} /> };
    }
    html! {
        <details class="desk-more photo">
            <summary>{ ctx.text("ui-photo") }</summary>
            <p class="desk-says">{ ctx.text("ui-photo-says") }</p>
            if *is_unreadable {
                <p class="wrong" role="alert">{ ctx.text("ui-photo-unreadable") }</p>
            }
            { open }
        </details>
    }
}

#[derive(Properties, PartialEq)]
struct BoardProps {
    picture: ImageBitmap,
    photo: Photo,
    shown: PhotoShown,
    unit: Units,
    enter: Callback<Entry>,
    /// The way to another picture.
    open: Html,
}

/// The picture on which is marked.
#[component]
fn Board(props: &BoardProps) -> Html {
    let ctx = use_ctx();
    let chosen = use_state(|| 0_usize);
    let (frame, whole, magnifier) = (use_node_ref(), use_node_ref(), use_node_ref());
    let room = use_room(&frame);
    let (photo, bitmap) = (props.photo.clone(), props.picture.clone());
    {
        let whole = whole.clone();
        use_effect_with(bitmap.clone(), move |picture| draw_whole(&whole, picture));
    }
    {
        let magnifier = magnifier.clone();
        let about = (bitmap.clone(), photo.marks.get(*chosen).copied());
        use_effect_with(about, move |(picture, at)| magnify(&magnifier, picture, *at));
    }
    let across = f64::from(bitmap.width());
    let mark = {
        let (act, photo, chosen, wanted) = (ctx.act.clone(), photo.clone(), chosen.clone(), props.shown.wanted);
        move |index: usize, mark: Mark| {
            let mut photo = photo.clone();
            let mark = Mark { x: mark.x.clamp(0.0, photo.size.0), y: mark.y.clamp(0.0, photo.size.1), ..mark };
            if let Some(known) = photo.marks.get_mut(index) {
                *known = mark;
            } else if photo.marks.len() < wanted as usize {
                photo.marks.push(mark);
            } else {
                return;
            }
            chosen.set(index);
            act.emit(Action::Mark(Some(photo)));
        }
    };
    let next = photo.marks.len();
    let tapped = {
        let (mark, whole) = (mark.clone(), whole.clone());
        move |event: MouseEvent| {
            let Some((x, y, width)) = tapped_at(&event, &whole) else { return };
            let scale = across / width;
            mark(next, Mark { x: x * scale, y: y * scale, scale });
        }
    };
    let middle = {
        let (mark, photo) = (mark.clone(), photo.clone());
        let scale = across / MIDDLE;
        move |_: MouseEvent| mark(next, Mark { x: photo.size.0 / 2.0, y: photo.size.1 / 2.0, scale })
    };
    let refined = {
        let (mark, at, index, bitmap) = (mark.clone(), photo.marks.get(*chosen).copied(), *chosen, bitmap.clone());
        let magnifier = magnifier.clone();
        move |event: MouseEvent| {
            let Some((at, (x, y, width))) = at.zip(tapped_at(&event, &magnifier)) else { return };
            let fine = seen(&bitmap) / width;
            mark(index, Mark { x: at.x + (x - width / 2.0) * fine, y: at.y + (y - width / 2.0) * fine, scale: fine });
        }
    };
    let nudged = |index: usize| {
        let (mark, at, bitmap) = (mark.clone(), photo.marks[index], bitmap.clone());
        move |event: KeyboardEvent| {
            let (x, y) = match event.key().as_str() {
                "ArrowLeft" => (-1.0, 0.0),
                "ArrowRight" => (1.0, 0.0),
                "ArrowUp" => (0.0, -1.0),
                "ArrowDown" => (0.0, 1.0),
                _ => return,
            };
            event.prevent_default();
            let fine = seen(&bitmap) / f64::from(MAGNIFIER) * 2.0;
            let by = if event.shift_key() { fine * STRIDE } else { fine };
            mark(index, Mark { x: at.x + x * by, y: at.y + y * by, scale: fine });
        }
    };
    let name = |index: usize| props.shown.names.get(index).cloned().unwrap_or_default();
    let enter = {
        let (enter, photo) = (props.enter.clone(), photo.clone());
        move |_: MouseEvent| enter.emit(Entry::Photo(photo.clone()))
    };
    html! {
        <section class="photo" aria-label={ctx.text("ui-photo")}>
            { paper(&ctx, &photo, props.unit) }
            <p class="desk-says" role="status">{ props.shown.next.clone() }</p>
            <div class="photo-frame" ref={frame} role="img" aria-label={ctx.text("ui-photo-picture")} onclick={tapped}>
                <canvas ref={whole} />
                { marks(&photo, *chosen, across / room.map_or(MIDDLE, |room| f64::from(room.0))) }
            </div>
            <div class="photo-fine">
                <div class="photo-magnifier" role="img" aria-label={ctx.text("ui-photo-magnifier")} onclick={refined}>
                    <canvas ref={magnifier} width={MAGNIFIER.to_string()} height={MAGNIFIER.to_string()} />
                </div>
                <div class="photo-marks">
                    for index in 0..next {
                        <button
                            key={index} type="button" class="button" aria-pressed={(index == *chosen).to_string()}
                            onclick={{ let chosen = chosen.setter(); move |_| chosen.set(index) }} onkeydown={nudged(index)}
                        >
                            { name(index) }
                        </button>
                    }
                    if next < props.shown.wanted as usize {
                        <button type="button" class="button" onclick={middle}>
                            { format!("{}: {}", name(next), ctx.text("ui-photo-middle")) }
                        </button>
                    }
                </div>
            </div>
            if let Some(wrong) = &props.shown.wrong {
                <p class="wrong" role="alert">{ wrong.clone() }</p>
            }
            if !props.shown.lines.is_empty() {
                <ul class="photo-lines">
                    for (at, line) in props.shown.lines.iter().enumerate() {
                        <li key={at}>{ line.clone() }</li>
                    }
                </ul>
            }
            <div class="actions">
                { props.open.clone() }
                <button type="button" class="button firm" disabled={!props.shown.can_be_taken()} onclick={enter}>
                    { ctx.text("ui-photo-take") }
                </button>
            </div>
        </section>
    }
}

/// What lies on the plate.
fn paper(ctx: &Ctx, photo: &Photo, unit: Units) -> Html {
    let now = match &photo.paper {
        PaperSize::A4 => Sheet::A4,
        PaperSize::Letter => Sheet::Letter,
        PaperSize::Own { .. } => Sheet::Own,
    };
    let take = {
        let (act, photo) = (ctx.act.clone(), photo.clone());
        Callback::from(move |paper: PaperSize| act.emit(Action::Mark(Some(Photo { paper, ..photo.clone() }))))
    };
    let ways =
        [(Sheet::A4, "A4".to_owned()), (Sheet::Letter, "Letter".to_owned()), (Sheet::Own, ctx.text("ui-photo-own"))];
    let changed = take.reform(move |sheet| match sheet {
        Sheet::A4 => PaperSize::A4,
        Sheet::Letter => PaperSize::Letter,
        Sheet::Own => PaperSize::Own { sides: Default::default(), unit },
    });
    let side = |index: usize, key: &str| {
        let PaperSize::Own { sides, unit } = photo.paper.clone() else { return Html::default() };
        let (take, value) = (take.clone(), sides[index].clone());
        let written = move |event: InputEvent| {
            let Some(input) = event.target_dyn_into::<HtmlInputElement>() else { return };
            let mut sides = sides.clone();
            sides[index] = input.value();
            take.emit(PaperSize::Own { sides, unit });
        };
        html! {
            <label>
                <span>{ ctx.text(key) }</span>
                <input class="entry" inputmode="decimal" autocomplete="off" {value} oninput={written} />
            </label>
        }
    };
    html! {
        <>
            { switch(ctx.text("ui-photo-paper"), ways, now, &changed) }
            if now == Sheet::Own {
                <div class="photo-sides">{ side(0, "ui-photo-side-first") }{ side(1, "ui-photo-side-second") }</div>
            }
        </>
    }
}

/// The marks over the picture: the sheet's corners joined, the holes with their numbers.
fn marks(photo: &Photo, chosen: usize, coarse: f64) -> Html {
    let px = |css: f64| css * coarse;
    let corners: Vec<String> =
        photo.marks.iter().take(CORNERS).map(|mark| format!("{},{}", pixel(mark.x), pixel(mark.y))).collect();
    html! {
        <svg viewBox={format!("0 0 {} {}", pixel(photo.size.0), pixel(photo.size.1))} aria-hidden="true">
            <polygon points={corners.join(" ")} />
            for (at, mark) in photo.marks.iter().enumerate() {
                <g key={at} class={classes!((at == chosen).then_some("is-chosen"))}>
                    <circle cx={pixel(mark.x)} cy={pixel(mark.y)} r={pixel(px(7.0))} />
                    <text x={pixel(mark.x + px(10.0))} y={pixel(mark.y - px(8.0))} font-size={pixel(px(14.0))}>
                        { if at < CORNERS { at + 1 } else { at + 1 - CORNERS } }
                    </text>
                </g>
            }
        </svg>
    }
}

/// A place or size on the picture, drawn to the whole pixel.
#[expect(clippy::cast_possible_truncation, reason = "a picture has far fewer pixels")]
fn pixel(at: f64) -> String {
    (at.round() as i32).to_string()
}

/// Where a canvas was tapped, from its upper left corner, and how wide it is.
fn tapped_at(event: &MouseEvent, canvas: &NodeRef) -> Option<(f64, f64, f64)> {
    let area = canvas.cast::<Element>()?.get_bounding_client_rect();
    let (x, y) = (f64::from(event.client_x()) - area.left(), f64::from(event.client_y()) - area.top());
    (area.width() > 0.0).then(|| (x, y, area.width()))
}

/// Pixels of the picture that the magnifier shows from side to side.
fn seen(bitmap: &ImageBitmap) -> f64 {
    (f64::from(bitmap.width().max(bitmap.height())) / 12.0).clamp(80.0, 240.0)
}

async fn bitmap_of(file: &File) -> Result<ImageBitmap, JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    JsFuture::from(window.create_image_bitmap_with_blob(file)?).await?.dyn_into()
}

fn context_of(canvas: &HtmlCanvasElement) -> Option<CanvasRenderingContext2d> {
    canvas.get_context("2d").ok()??.dyn_into().ok()
}

/// Lays the whole picture out in the frame.
fn draw_whole(canvas: &NodeRef, picture: &ImageBitmap) {
    let Some(canvas) = canvas.cast::<HtmlCanvasElement>() else { return };
    let longest = picture.width().max(picture.height()).max(MOST_PIXELS);
    let [width, height] = [picture.width(), picture.height()].map(|side| side * MOST_PIXELS / longest);
    canvas.set_width(width);
    canvas.set_height(height);
    if let Some(context) = context_of(&canvas) {
        let _ = context.draw_image_with_image_bitmap_and_dw_and_dh(picture, 0.0, 0.0, width.into(), height.into());
    }
}

/// Shows what lies about a mark, large.
fn magnify(magnifier: &NodeRef, picture: &ImageBitmap, at: Option<Mark>) {
    let Some(canvas) = magnifier.cast::<HtmlCanvasElement>() else { return };
    let Some(context) = context_of(&canvas) else { return };
    let size = f64::from(MAGNIFIER);
    context.clear_rect(0.0, 0.0, size, size);
    let Some(at) = at else { return };
    let seen = seen(picture);
    let _ = context.draw_image_with_image_bitmap_and_sw_and_sh_and_dx_and_dy_and_dw_and_dh(
        picture,
        at.x - seen / 2.0,
        at.y - seen / 2.0,
        seen,
        seen,
        0.0,
        0.0,
        size,
        size,
    );
}
