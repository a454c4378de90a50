//! The page's side: attributes, events, the JavaScript interface.

use fitup_catalogue::{BuildFile, link};
use fitup_core::fit::judge;
use fitup_core::item::ItemRef;
use fitup_core::search::{Searcher, headline};
use fitup_tests::browser::{LAPTOP, browse};
use fitup_words::{Lang, Units, Words};
use serde_json::{Value, json};

use crate::widget::{choose, comes_to, desk, open, story, words};

/// A value as it comes back from a page: JavaScript knows one kind of number, so 300.0 is 300.
fn as_in_a_page(value: Value) -> Value {
    match value {
        Value::Number(number) => {
            let whole = number.as_f64().filter(|n| n.fract() == 0.0 && n.abs() < 2f64.powi(53));
            #[expect(clippy::cast_possible_truncation, reason = "it is whole and in range")]
            whole.map_or(Value::Number(number), |n| json!(n as i64))
        }
        Value::Array(list) => list.into_iter().map(as_in_a_page).collect(),
        Value::Object(record) => record.into_iter().map(|(name, value)| (name, as_in_a_page(value))).collect(),
        other => other,
    }
}

#[test]
fn every_change_is_told_with_build_link_and_the_librarys_report() {
    browse("interface-events", LAPTOP, async |page| {
        let desk = desk();
        let build = story(&desk, "two-holes");
        open(&page, "").await?;
        page.value("(() => { document.addEventListener('fitup-change', (e) => { window.last = e.detail; }); })()")
            .await?;
        let text = link::write(&BuildFile::of(desk.catalogue(), &build));
        page.value(&format!("document.querySelector('fit-up').setAttribute('build', {})", json!(text))).await?;
        page.until("the event", &format!("window.last?.link === {}", json!(text))).await?;
        let told: Value = page.value("window.last.report").await?;
        let best = headline(&mut Searcher::new(&desk), &build);
        let report = words().report(desk.catalogue(), &build, &judge(&desk, &build), best.as_ref());
        let expected = as_in_a_page(serde_json::to_value(&report)?);
        assert_eq!(told["verdict"], expected["verdict"]);
        assert_eq!((&told["headline"], &told["answers"]), (&expected["headline"], &expected["answers"]));
        assert_eq!(told["findings"], expected["findings"]);
        assert_eq!(told["footprint"], expected["footprint"]);
        let file = BuildFile::read(&page.value("window.last.build").await?.to_string()).expect("a build file");
        assert_eq!(file, BuildFile::of(desk.catalogue(), &build));
        Ok(())
    });
}

#[test]
fn the_interface_loads_evaluates_completes_and_mends() {
    browse("interface-calls", LAPTOP, async |page| {
        let desk = desk();
        let build = story(&desk, "another-seat");
        let file = json!(BuildFile::of(desk.catalogue(), &build));
        open(&page, "").await?;
        page.browser().set_script_timeout(std::time::Duration::from_mins(1)).await?;
        let script = "const done = arguments[1]; (async () => { try {
            const { load, teach } = await fitup.engine();
            teach('en', await (await fetch('words/en.txt')).text());
            const catalogue = load(await (await fetch('catalogue/demo.json')).text());
            const report = catalogue.evaluate(arguments[0], 'en', 'metric');
            const completions = catalogue.completions(arguments[0]);
            const remedies = catalogue.remedies(arguments[0], 'en', 'metric');
            const unknown = catalogue.evaluate({ format: 1, machine: 'zzz' }, 'en', 'metric');
            const empty = catalogue.evaluate({ format: 1 }, 'en', 'metric');
            const machine = arguments[0].machine;
            const merged = catalogue.merge(arguments[0], { format: 1, serials: { [machine]: 7 }, on_hand: [machine] });
            let refused = null; try { load('{'); } catch (e) { refused = [e instanceof Error, e.code, e.problems.length]; }
            let wrong = null; try { catalogue.evaluate({ format: 1, machin: 'x' }, 'en', 'metric'); } catch (e) { wrong = String(e); }
            const untaught = catalogue.evaluate(arguments[0], 'de', 'metric').reader.lang;
            teach('de', await (await fetch('words/de.txt')).text());
            const german = catalogue.evaluate(arguments[0], 'de', 'metric');
            done({ unknown, empty, untaught, german, report, completions, remedies, merged, refused, wrong });
        } catch (e) { done({ failed: String(e) }); } })();";
        let got = page.browser().execute_async(script, vec![file]).await?.json().clone();
        assert_eq!(got["failed"], Value::Null);
        let answer = judge(&desk, &build);
        let told = headline(&mut Searcher::new(&desk), &build);
        let expected =
            as_in_a_page(serde_json::to_value(words().report(desk.catalogue(), &build, &answer, told.as_ref()))?);
        assert_eq!(got["report"]["findings"], expected["findings"]);
        assert_eq!((&got["unknown"]["unknown"], &got["unknown"]["verdict"]), (&json!(["zzz"]), &Value::Null));
        assert_eq!(got["unknown"]["headline"]["decided"], false);
        assert_eq!((&got["empty"]["verdict"], &got["empty"]["headline"]["decided"]), (&Value::Null, &json!(false)));
        assert_eq!(got["untaught"], "en");
        let german = Words::new(Lang::De, Units::Metric).report(desk.catalogue(), &build, &answer, told.as_ref());
        assert_eq!(got["german"]["verdict_text"], german.verdict_text);
        let steps =
            ["machines", "frames", "seats", "implements"].map(|step| got["completions"][step].as_array().map(Vec::len));
        let catalogue = desk.catalogue();
        let lengths =
            [catalogue.machines.len(), catalogue.frames.len() + 1, catalogue.seats.len(), catalogue.implements.len()];
        assert_eq!(steps, lengths.map(Some));
        let found = fitup_core::search::remedies(&desk, &build).found;
        assert!(!found.is_empty());
        let offer = |remedy| {
            let mut offer = serde_json::to_value(words().remedy(catalogue, remedy))?;
            offer["build"] = serde_json::to_value(BuildFile::of(catalogue, &remedy.build))?;
            Ok::<Value, serde_json::Error>(as_in_a_page(offer))
        };
        assert_eq!(got["remedies"], found.iter().map(offer).collect::<Result<Value, _>>()?);
        let mut merged = build.clone();
        let machine = ItemRef::Machine(build.choices.machine.expect("the story has a machine"));
        merged.side.serials.insert(machine, 7);
        merged.side.on_hand.insert(machine);
        let file = BuildFile::read(&got["merged"].to_string()).expect("a build file");
        assert_eq!(file, BuildFile::of(catalogue, &merged));
        assert_eq!(got["refused"], json!([true, "catalogue", 1]));
        assert!(got["wrong"].as_str().is_some_and(|said| said.contains("machin")), "{}", got["wrong"]);
        Ok(())
    });
}

#[test]
fn two_widgets_keep_their_builds_apart_in_one_address() {
    browse("interface-two", LAPTOP, async |page| {
        let desk = desk();
        open(&page, "").await?;
        page.value("(() => { const e = document.createElement('fit-up'); e.id = 'second'; e.lang = 'en'; e.setAttribute('catalogue', 'catalogue/demo.json'); document.body.append(e); })()").await?;
        page.until("the second sheet", "document.querySelector('#second').shadowRoot?.querySelector('.sheet') != null")
            .await?;
        let machine = crate::widget::label(&desk, ItemRef::Machine(fitup_core::item::MachineId(0)));
        choose(&page, "machine", &machine).await?;
        page.value("(() => { const r = document.querySelector('#second').shadowRoot; r.querySelector('#step-seat').click(); })()").await?;
        page.until(
            "both in the address",
            "location.hash.includes('fit-up=1.') && location.hash.includes('second.step=seat')",
        )
        .await?;
        assert_eq!(
            page.value("document.querySelector('#second').shadowRoot.querySelectorAll('.step[data-chosen]').length")
                .await?,
            0
        );
        Ok(())
    });
}

#[test]
fn a_remedy_is_tried_with_one_touch_and_undone_with_one() {
    browse("interface-remedy", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &crate::widget::fragment(&desk, &story(&desk, "another-seat"))).await?;
        let before = crate::widget::verdict(&page).await?;
        page.click(".remedy .button").await?;
        page.until(
            "the verdict to change",
            &format!("widget.querySelector('.title-word').textContent !== {}", json!(before)),
        )
        .await?;
        assert!(page.focused().await?.contains("#details"), "the focus stays by the answer");
        page.click(".bar-tools button:first-child").await?;
        comes_to(&page, &before).await?;
        Ok(())
    });
}
