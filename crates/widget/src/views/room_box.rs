//! A box with a picture that fills it.

use yew::prelude::*;

use crate::ctx::svg;
use crate::hooks::use_room;

#[derive(Properties, PartialEq)]
pub struct RoomBoxProps {
    /// Its class.
    pub class: &'static str,
    /// The picture's markup.
    pub svg: String,
    /// Is told how much room there is.
    pub told: Callback<(u32, u32)>,
}

/// The box: it tells how much room it has, and shows what is drawn for it.
#[component]
pub fn RoomBox(props: &RoomBoxProps) -> Html {
    let node = use_node_ref();
    let room = use_room(&node);
    let told = props.told.clone();
    use_effect_with(room, move |room| room.iter().for_each(|&room| told.emit(room)));
    html! { <div class={props.class} ref={node}>{ svg(&props.svg) }</div> }
}
