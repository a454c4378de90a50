//! The answers to the questions, each with its own word, shape and colour.

use fitup_view::Answered;
use yew::prelude::*;

use super::verdict::{verdict_mark, verdict_word};

/// A line for each question.
pub fn answers(all: &[Answered]) -> Html {
    html! {
        <dl class="answers">
            for told in all {
                <div key={told.question.clone()}>
                    <dt>{ told.question.clone() }</dt>
                    <dd>
                        { verdict_word(told.verdict, told.word.clone()) }
                        if let Some(line) = told.line.clone() {
                            <span class="answer-line">{ line }</span>
                        }
                    </dd>
                </div>
            }
        </dl>
    }
}

/// A shape for each question, where there is no room for lines.
pub fn answer_marks(all: &[Answered]) -> Html {
    html! {
        <ul class="answer-marks">
            for told in all {
                <li key={told.question.clone()}>
                    { verdict_mark(told.verdict) }
                    <span>{ told.question.clone() }</span>
                    <span class="unseen">{ ": " }{ told.word.clone() }</span>
                </li>
            }
        </ul>
    }
}
