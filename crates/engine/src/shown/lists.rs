//! Two parts lists beside each other.

use fitup_catalogue::{PartsText, read_parts_text};
use fitup_core::item::bears_joint;
use fitup_core::search::{self, AssemblyCompared, AssemblySameness, LineSameness};
use fitup_view::{self as view, Assembly, ListFrom, Look};

use super::ctx::Ctx;

/// The view.
pub fn lists(ctx: Ctx, look: &Look) -> view::Lists {
    let catalogue = ctx.catalogue();
    let with_list = catalogue.items().map(|item| catalogue.body(item)).filter(|body| !body.parts_list.rows.is_empty());
    let read = look.lists.each_ref().map(|from| list_of(ctx, from));
    let is_ready = read.iter().all(|read| !read.list.rows.is_empty());
    let [first, second] = &read;
    let found = is_ready.then(|| {
        search::lists([&first.list, &second.list], &catalogue.parts, |heading| bears_joint(catalogue, heading))
    });
    let told = |read: &PartsText| {
        let count = read.list.rows.len();
        let faults = read.faults.iter().map(|fault| ctx.words.list_fault(fault)).collect();
        ((count > 0).then(|| ctx.text_with("lists-read", &[("count", count.into())])), faults)
    };
    view::Lists {
        items: with_list.map(|body| (body.id.clone(), body.label.clone())).collect(),
        read: read.iter().map(told).collect(),
        assemblies: found.iter().flat_map(|found| &found.assemblies).map(|one| shown(ctx, one)).collect(),
        says: (!is_ready).then(|| ctx.text("lists-says")),
    }
}

fn list_of(ctx: Ctx, from: &ListFrom) -> PartsText {
    match ctx.catalogue().find(&from.item) {
        Some(item) => PartsText { list: ctx.catalogue().body(item).parts_list.clone(), faults: Vec::new() },
        None if from.text.trim().is_empty() => PartsText::default(),
        None => read_parts_text(&from.text),
    }
}

fn shown(ctx: Ctx, one: &AssemblyCompared) -> Assembly {
    let (says, follows) = ctx.words.assembly_compared(one);
    let is_in_both = !matches!(one.sameness, AssemblySameness::OnlyFirst | AssemblySameness::OnlySecond);
    let lines = one.lines.iter().filter(|line| is_in_both && line.sameness != LineSameness::Same);
    Assembly {
        says,
        follows,
        is_same: one.sameness == AssemblySameness::Same,
        lines: lines.map(|line| ctx.words.line_compared(line)).collect(),
    }
}
