//! The judgement of a whole build.

pub(crate) mod answer;
mod cautions;
pub(crate) mod declared;
mod equipped;
pub(crate) mod parts;
mod seats;
pub(crate) mod strip;

use crate::build::{Build, Stack, StackJoint};
use crate::finding::{Check, Finding, Grade, Name, Question, Standing, Subject, Verdict};
use crate::findings;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::joint::overlay::Overlay;
use crate::fit::whole::footprint::footprint;
use crate::fit::whole::loads::loads;
use crate::fit::{joint, rule};
use crate::item::{End, Equipment, EquipmentId, ItemRef, Role};
use crate::order;
use answer::{Answer, Joint, QuestionAnswer};
use cautions::cautions;
use parts::parts_to_buy;

findings! {
    /// A port asks for something that the build does not have.
    NothingAnswers = "nothing-answers", Fit { role: Role, port: Name }
    /// A port asks for something that a piece of equipment would bring that is not on the machine.
    EquipmentAnswers = "equipment-answers", Fit { what: ItemRef, role: Role, port: Name }
}

/// Judges a build: every joint, every rule, what it measures and what has to be bought.
///
/// Total: any build of any catalogue gives an answer; what is not known is a finding. The same
/// build gives the same answer bit for bit, natively and in wasm.
pub fn judge(desk: &Desk, build: &Build) -> Answer {
    let context = Context::new(desk, build);
    let mut findings = Vec::new();
    let mut joints = Vec::new();
    for stack_joint in &context.stack.joints {
        let mating = joint::judge(&context, stack_joint);
        joints.push(describe(&context, stack_joint, mating.overlay));
        findings.extend(mating.findings);
    }
    unanswered(&context, &mut findings);
    for rule in rule::RULES {
        rule.judge(&context, &mut findings);
    }
    let mut superfluous = Vec::new();
    rule::superfluous(&context, &findings, &mut superfluous);
    findings.append(&mut superfluous);
    let loads = loads(&context).and_then(Result::ok);
    let measured = footprint(&context, loads.as_ref(), false);
    for rule in rule::TRAVEL {
        rule.judge(&context, &mut findings);
    }
    sort(&mut findings);
    for joint in &mut joints {
        let subject = Subject::Joint(joint.role, joint.carrier.0, joint.carried.0);
        joint.findings = (0..findings.len()).filter(|&i| findings[i].subject == subject).collect();
        joint.verdict = joint.findings.iter().map(|&i| findings[i].verdict).max().unwrap_or_default();
    }
    let bolts = context.stack.joints.iter().zip(&joints).flat_map(|(stack_joint, joint)| {
        let of_joint: Vec<&Finding> = joint.findings.iter().map(|&index| &findings[index]).collect();
        joint::bolts_of(&context, stack_joint, &of_joint)
    });
    let bolts = bolts.collect();
    let complete = build.is_complete();
    let answers = Question::ALL.map(|question| {
        let is_decided = match question {
            Question::Fit | Question::Work => complete,
            Question::Travel => complete && build.side.trailer.is_some(),
            Question::Site => complete && build.side.site.is_some(),
        };
        QuestionAnswer::new(question, is_decided, &findings)
    });
    let [fit, work, ..] = answers;
    let (standing, guide_row) = standing(desk, build);
    let seats = seats::seats(&context, &findings);
    let stack = Stack { seats, ..context.stack.clone() };
    Answer {
        verdict: fit.worst.max(work.worst),
        answers,
        standing,
        guide_row,
        complete,
        joints,
        footprint: measured,
        bare: footprint(&context, loads.as_ref(), true),
        parts: parts_to_buy(&context),
        bolts,
        strip: strip::strip(&context, &findings, seats),
        cautions: cautions(desk.catalogue(), build, &findings),
        findings,
        stack,
    }
}

/// The verdict of the four steps alone, for searches that visit many builds: trailer and site are questions about
/// the finished machine and mark no option down.
pub fn verdict(desk: &Desk, build: &Build) -> Verdict {
    findings(desk, build).iter().map(|finding| finding.verdict).max().unwrap_or_default()
}

/// The findings of the four steps alone, in the order they are found.
pub(crate) fn findings(desk: &Desk, build: &Build) -> Vec<Finding> {
    let mut all = Vec::new();
    visit(desk, build, |found| {
        all.append(found);
        true
    });
    all
}

/// Whether the four steps alone have a worse verdict; ends at the first finding that says so.
pub(crate) fn is_worse(desk: &Desk, build: &Build, than: Verdict) -> bool {
    !visit(desk, build, |found| {
        let holds = found.iter().all(|finding| finding.verdict <= than);
        found.clear();
        holds
    })
}

/// Hands over what joints and rules find, one after the other, until `go_on` says no; whether it never did.
fn visit(desk: &Desk, build: &Build, mut go_on: impl FnMut(&mut Vec<Finding>) -> bool) -> bool {
    let context = Context::new(desk, build);
    let mut found = Vec::new();
    for stack_joint in &context.stack.joints {
        found.extend(joint::judge(&context, stack_joint).findings);
        if !go_on(&mut found) {
            return false;
        }
    }
    unanswered(&context, &mut found);
    if !go_on(&mut found) {
        return false;
    }
    rule::RULES.iter().all(|rule| {
        rule.judge(&context, &mut found);
        go_on(&mut found)
    })
}

fn standing(desk: &Desk, build: &Build) -> (Option<Standing>, Option<usize>) {
    if !build.is_complete() {
        return (None, None);
    }
    let row = desk.catalogue().guide.as_ref().and_then(|guide| {
        guide.set(
            build.choices.machine,
            build.choices.carrying.frame(),
            build.choices.seating.seat(),
            build.choices.implement,
        )
    });
    let standing = if row.is_some() { Standing::Listed } else { Standing::OffGuide };
    (Some(standing), row)
}

/// Ports that ask for something the build does not have.
fn unanswered(context: &Context, findings: &mut Vec<Finding>) {
    for open in &context.stack.open {
        let port = context.port(open.item, open.port);
        if let Some(id) = would_answer(context, open.role) {
            let fact = EquipmentAnswers { what: ItemRef::Equipment(id), role: open.role, port: port.name.clone() };
            findings.push(Finding::of(fact, Subject::Item(open.item), unanswered_role(open.role), Grade::Drawing));
            continue;
        }
        let fact = NothingAnswers { role: open.role, port: port.name.clone() };
        findings.push(
            Finding::of(fact, Subject::Item(open.item), unanswered_role(open.role), Grade::Drawing)
                .check(Check::Look { item: open.item, what: port.name.clone() }),
        );
    }
}

/// The first piece of equipment that is not on the machine and carries a port of this role.
fn would_answer(context: &Context, role: Role) -> Option<EquipmentId> {
    let (id, machine) = context.machine()?;
    let carries = |piece: &Equipment| piece.body.ports.iter().any(|it| it.role == role && it.end == End::Carrier);
    let is_off = |id: EquipmentId| !machine.on.iter().any(|on| on.id == id);
    let mut pieces = context.catalogue().equipment_for(id);
    pieces.find(|&(id, piece)| is_off(id) && carries(piece)).map(|(id, _)| id)
}

/// What a port of this role comes to if nothing answers it.
pub(crate) const fn unanswered_role(role: Role) -> Verdict {
    match role {
        // Without a case drain, a switch or a coupler the workshop runs a line.
        Role::CaseDrain | Role::Wiring | Role::Pressure | Role::Return => Verdict::BoltsUpWithWork,
        _ => Verdict::WontMount,
    }
}

/// What the ports that nothing answers come to.
pub(crate) fn unanswered_verdict(stack: &Stack) -> Verdict {
    stack.open.iter().map(|open| unanswered_role(open.role)).max().unwrap_or_default()
}

fn sort(findings: &mut [Finding]) {
    order::sort(findings, |a, b| {
        (b.verdict.cmp(&a.verdict)).then_with(|| a.subject.cmp(&b.subject)).then_with(|| a.code.cmp(b.code))
    });
}

fn describe(context: &Context, stack_joint: &StackJoint, overlay: Option<Overlay>) -> Joint {
    let end = |(at, port): (usize, usize)| (context.stack.placed[at].item, port);
    let (carrier, carried) = (end(stack_joint.carrier), end(stack_joint.carried));
    let name = |(item, port): (ItemRef, usize)| (item, context.port(item, port).name.clone());
    let parts = |(item, port): (ItemRef, usize)| context.bearing(item, port);
    let base = context.stack.placed[stack_joint.carrier.0].placement;
    let at = context.port(carrier.0, carrier.1).pose.zip(base).map(|(pose, base)| {
        let point = base.point(pose.at.point());
        (point.x, point.y, point.z)
    });
    Joint {
        role: stack_joint.role,
        carrier: name(carrier),
        carried: name(carried),
        carrier_parts: parts(carrier),
        carried_parts: parts(carried),
        verdict: Verdict::default(),
        findings: Vec::new(),
        overlay,
        at,
    }
}
