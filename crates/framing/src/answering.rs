//! From an outcome to the command's reply.

use loads::header::CaseLoads;
use members::header::{Check, CutKind, HeaderAnswer, HeaderInput, KingTable, TableAnswer, Tried};

use crate::header::HeaderOutcome;
use crate::reading::Reading;
use crate::reply::{
    AssumedReply, CaseLoadsReply, CheckReply, CutReply, GapReply, HeaderReply, KingsReply, Refusal, SizeReply,
    StepReply, TableReply, WorkingReply,
};
use crate::words;

/// The reply to a header check.
///
/// # Errors
/// The inputs that were refused.
pub fn reply(outcome: &HeaderOutcome) -> Result<HeaderReply, Vec<Refusal>> {
    match &outcome.answered {
        Some((input, answer)) => Ok(header_reply(&outcome.reading, input, answer)),
        None => Err(refusals(&outcome.reading)),
    }
}

fn refusals(reading: &Reading) -> Vec<Refusal> {
    reading
        .problems()
        .map(|(field, problem)| Refusal { field: field.to_owned(), problem: problem.to_owned() })
        .collect()
}

fn header_reply(reading: &Reading, input: &HeaderInput, answer: &HeaderAnswer) -> HeaderReply {
    let judged = &answer.tried[answer.judged];
    let governing = judged.governing();
    HeaderReply {
        verdict: words::verdict_on(judged).to_owned(),
        size: judged.member.name(),
        ratio: governing.map(|check| check.share),
        governs: governing.map(|check| check.limit.words().to_owned()),
        combination: governing.map(|check| check.combination.name().to_owned()),
        reason: reason(judged),
        line_load_plf: answer.line_load.plf(),
        reaction_lb: answer.reaction.pounds(),
        loads_plf: case_loads(&answer.loads),
        jacks_each_side: judged.jacks,
        jacks_to_set: answer.jacks_to_set,
        kings_to_set: answer.kings_to_set,
        one_jack_bearing: members::header::one_jack_bearing(input, &judged.member).map(|check| check_reply(&check)),
        kings: kings(answer),
        checks: judged.checks.iter().map(check_reply).collect(),
        smallest: answer.smallest.iter().map(|&index| answer.tried[index].member.name()).collect(),
        sizes: answer.tried.iter().map(size).collect(),
        table: table(input, answer),
        cuts: cuts(answer, input),
        gap: gap(answer),
        questions: words::questions(reading, input, answer).into_iter().map(|(_, question)| question).collect(),
        assumed: words::assumptions(reading, input)
            .into_iter()
            .map(|(input, says)| AssumedReply { input: input.map(str::to_owned), says })
            .collect(),
        action: words::action(answer),
        cautions: words::cautions(input, answer),
        working: working(reading, answer),
    }
}

fn reason(tried: &Tried) -> Option<String> {
    tried.outside.clone().or_else(|| tried.misfit.map(words::misfit))
}

const fn case_loads(loads: &CaseLoads) -> CaseLoadsReply {
    CaseLoadsReply {
        dead: loads.dead.plf(),
        live: loads.live.plf(),
        attic_alone: loads.attic_alone.plf(),
        roof_live: loads.roof_live.plf(),
        snow: loads.snow.plf(),
    }
}

fn check_reply(check: &Check) -> CheckReply {
    CheckReply {
        limit: check.limit.words().to_owned(),
        ratio: check.share,
        demand: check.demand,
        capacity: check.capacity,
        unit: check.unit.to_owned(),
        combination: check.combination.name().to_owned(),
    }
}

fn kings(answer: &HeaderAnswer) -> Option<KingsReply> {
    let kings = answer.kings?;
    let (by_table, table_outside) = match &answer.king_table {
        Some(KingTable::Kings { each_side, .. }) => (Some(*each_side), None),
        Some(KingTable::Outside(sentence)) => (None, Some(sentence.clone())),
        None => (None, None),
    };
    Some(KingsReply {
        each_side: kings.each_side(),
        for_bending: kings.for_bending,
        for_stiffness: kings.for_stiffness,
        one_king_ratio: kings.one_king_share,
        pressure_psf: kings.pressure.psf(),
        by_table,
        table_outside,
    })
}

fn size(tried: &Tried) -> SizeReply {
    let governing = tried.governing();
    SizeReply {
        size: tried.member.name(),
        verdict: words::verdict_on(tried).to_owned(),
        ratio: governing.map(|check| check.share),
        governs: governing.map(|check| check.limit.words().to_owned()),
        jacks_each_side: tried.jacks,
        reason: reason(tried),
    }
}

fn table(input: &HeaderInput, answer: &HeaderAnswer) -> TableReply {
    let mut reply = TableReply {
        kind: "span".to_owned(),
        edition: input.edition.name().to_owned(),
        allowed_in: None,
        printed_in: None,
        passes: None,
        jacks: None,
        says: words::table(answer, input),
    };
    match &answer.table {
        TableAnswer::AskAbove => "ask".clone_into(&mut reply.kind),
        TableAnswer::Nonbearing { .. } => "nonbearing".clone_into(&mut reply.kind),
        TableAnswer::Outside(_) => "outside".clone_into(&mut reply.kind),
        TableAnswer::Span { allowed, printed, jacks, .. } => {
            reply.allowed_in = Some(allowed.inches());
            reply.printed_in = Some(printed.inches());
            reply.passes = Some(input.opening <= *allowed);
            reply.jacks = Some(*jacks);
        }
    }
    reply
}

fn cuts(answer: &HeaderAnswer, input: &HeaderInput) -> Vec<CutReply> {
    let header = answer.tried[answer.judged].member.name();
    answer
        .cuts
        .iter()
        .map(|cut| CutReply {
            count: cut.count,
            piece: piece(cut.piece, &header, input),
            length: words::length(cut.length),
        })
        .collect()
}

/// A piece of the cut list in words.
#[must_use]
pub fn piece(kind: CutKind, header: &str, input: &HeaderInput) -> String {
    let stud = input.wall.stud.nominal();
    match kind {
        CutKind::Header => format!("Header, {header}"),
        CutKind::Jack => format!("Jack, {stud}"),
        CutKind::King => format!("King, {stud}"),
        CutKind::CrippleAbove => format!("Cripple above, {stud}"),
    }
}

fn gap(answer: &HeaderAnswer) -> Option<GapReply> {
    answer.gap.map(|gap| GapReply {
        status: "bearing not complete, fix before cover".to_owned(),
        found_in: gap.found.inches(),
        expected_in: gap.expected.inches(),
        least_in: gap.least.inches(),
        most_in: gap.most.inches(),
        action: words::gap_action(),
    })
}

fn working(reading: &Reading, answer: &HeaderAnswer) -> Vec<WorkingReply> {
    let step = |step: &members::working::Step| StepReply {
        symbol: step.symbol.to_owned(),
        meaning: step.meaning.clone(),
        expression: step.expression.clone(),
        value: step.value,
        unit: step.unit.to_owned(),
        source: words::basis(step.basis, reading),
    };
    answer
        .working
        .iter()
        .map(|part| WorkingReply { heading: part.heading.clone(), steps: part.steps.iter().map(step).collect() })
        .collect()
}
