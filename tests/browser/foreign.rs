//! The loop with a factory that reads no English: its merchandiser reads Vietnamese, its sample room
//! Bengali. Everything that they press is found by its words in their language.

use fellseam::exchange::Role;
use fellseam::exchange::round::Kind;
use fellseam::exchange::signature::Statement;
use fellseam::exchange::thread;
use fellseam::language::{Language, Message, Text};

use crate::garment;
use crate::samples;
use crate::stage::Stage;
use crate::walk::{People, ends, enter};
use crate::window::Window;

/// Somebody with their language.
struct Reader<'a> {
    window: &'a Window,
    t: Text,
}

impl Reader<'_> {
    /// Chooses their language once, on their own page.
    async fn begins(&self) {
        let window = self.window;
        window.opens("/me").await;
        window
            .chooses("language", self.t.language().own_name())
            .await;
        window.presses_in("main", "Save").await;
        self.sees("said-saved").await;
        window.opens("/").await;
        let lang = window
            .asks("return document.documentElement.lang", &[])
            .await;
        assert_eq!(lang, self.t.lang());
    }

    fn say(&self, id: &str) -> String {
        self.t.say(id).to_string()
    }

    async fn presses(&self, words: impl ToString) {
        self.window.presses(&words.to_string()).await;
        self.understands().await;
    }

    async fn sees(&self, id: &str) {
        self.window.must_see(&self.say(id)).await;
    }

    /// Nothing on the page is English but what the brand wrote, names and codes. It is told by the
    /// words that no sentence of English does without.
    async fn understands(&self) {
        let script = "const words = /\\b(the|and|your|with|this|that|are|was|have|from)\\b/i;
            const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            const found = [];
            for (let node = walker.nextNode(); node; node = walker.nextNode()) {
                const at = node.parentElement;
                if (at.closest('script, style, [hidden], option') || !at.getClientRects().length) continue;
                if (at.closest('[lang]') !== document.documentElement) continue;
                if (words.test(node.data)) found.push(node.data.trim());
            }
            return found.join(' | ');";
        let english = self.window.asks(script, &[]).await;
        let english = english.as_str().expect("a text");
        // What the brand wrote stays as it is.
        let allowed = [
            "The length is not even.",
            "left side seam",
            "high point of the shoulder",
        ];
        let rest: Vec<&str> = english
            .split(" | ")
            .filter(|it| !it.is_empty() && !allowed.iter().any(|own| it.contains(own)))
            .collect();
        if !rest.is_empty() {
            self.window.fails(&format!("reads English: {rest:?}")).await;
        }
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_factory_that_reads_no_english_goes_the_whole_way() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let people = enter(&stage, true).await;
    let People { iris, linh, hoa } = &people;
    let linh = Reader {
        window: linh,
        t: Language::Vietnamese.text(),
    };
    let hoa = Reader {
        window: hoa,
        t: Language::Bengali.text(),
    };
    linh.begins().await;
    hoa.begins().await;

    let style = garment::reaches_the_factory(iris, folder.path(), true).await;

    asks_in_her_words(iris, &linh).await;
    acknowledges_and_signs(&linh, &style).await;
    let round = samples::asks(iris, &style).await;
    starts(&linh).await;
    measures(&hoa).await;
    sends(&linh, &round).await;
    iris.opens(&round).await;
    iris.presses("The pieces have arrived").await;
    iris.presses("Measuring is done").await;
    iris.fills(&[("outcome", "remake")]).await;
    iris.types("reason", "The length is not even.").await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see("Decided.").await;

    linh.window.opens(&round).await;
    linh.understands().await;
    let remake = linh.t.name(&fellseam::exchange::round::Outcome::Remake);
    linh.window.must_see(&remake.to_string()).await;
    signs(&linh).await;
    ends(stage, people).await;
}

/// A ready sentence in two taps, read by the designer in English; her answer is one as well.
async fn asks_in_her_words(iris: &Window, linh: &Reader<'_>) {
    linh.window.opens("/").await;
    linh.presses(linh.t.say("need-acknowledge").with("revision", 1))
        .await;
    linh.sees("chart-title").await;
    linh.window.presses("C, Body length").await;
    linh.understands().await;
    linh.presses(linh.say("ready-title")).await;
    let send = linh.say("thread-send");
    linh.window
        .presses_in("form:has([value=ask-how-measured])", &send)
        .await;
    linh.understands().await;
    iris.opens("/").await;
    iris.presses("Answer: question").await;
    iris.must_see("How is C Body length measured? Please show where it begins and ends.")
        .await;
    iris.presses("Ready sentences").await;
    iris.presses_in("form:has([value=answer-spec])", "Send")
        .await;
    iris.must_see("The spec is right. Please work to it.").await;
    linh.window.opens("/").await;
    let kind = linh.t.name(&thread::Kind::Question).to_string();
    linh.presses(linh.t.say("need-read-answer").with("kind", kind))
        .await;
    linh.sees("phrase-answer-spec").await;
    linh.presses(linh.say("thread-close-question")).await;
}

async fn acknowledges_and_signs(linh: &Reader<'_>, style: &str) {
    linh.window.opens(&format!("{style}/revisions/1")).await;
    linh.understands().await;
    linh.presses(linh.t.say("acknowledge-button").with("revision", 1))
        .await;
    linh.sees("said-acknowledged").await;
    let statement = linh.t.statement(Statement::RevisionByFactory);
    linh.window.must_see(&statement.to_string()).await;
    signs(linh).await;
}

async fn signs(linh: &Reader<'_>) {
    let role = linh.t.name(&Role::Merchandiser).to_string();
    let as_her: Message = linh
        .t
        .say("sign-as")
        .with("name", "Linh")
        .with("role", role);
    linh.window.presses_in("#sign", &as_her.to_string()).await;
    linh.window
        .presses_in("#sign", &linh.say("sign-button"))
        .await;
    linh.sees("said-signed").await;
    linh.understands().await;
}

async fn starts(linh: &Reader<'_>) {
    linh.window.opens("/").await;
    let kind = linh.t.name(&Kind::Proto).to_string();
    let start = linh.t.say("need-round-start").with("number", 1);
    linh.presses(start.with("kind", kind)).await;
    linh.presses(linh.say("rounds-move-start")).await;
}

/// Point by point with the keypad.
async fn measures(hoa: &Reader<'_>) {
    hoa.window.opens("/").await;
    let kind = hoa.t.name(&Kind::Proto).to_string();
    let measure = hoa.t.say("need-round-measure").with("number", 1);
    hoa.presses(measure.with("kind", kind)).await;
    hoa.presses(hoa.say("rounds-measure")).await;
    hoa.window
        .waits_until("return !document.querySelector('.keypad').hidden")
        .await;
    let names = ["Chest width", "Bottom width", "Body length"];
    for values in samples::MEASURED {
        for (name, value) in names.iter().zip(values) {
            hoa.window
                .must_see_in(".measure-point:not([hidden]) h1", name)
                .await;
            hoa.understands().await;
            samples::types_on_keypad(hoa.window, value).await;
            hoa.window.presses(&hoa.say("rounds-save-next")).await;
        }
    }
    hoa.window
        .waits_until("return document.querySelector('.measure-waiting')?.hidden !== false")
        .await;
}

async fn sends(linh: &Reader<'_>, round: &str) {
    linh.window.opens(round).await;
    linh.understands().await;
    linh.window.must_see("▲ +3/4").await;
    linh.window.fills(&[("materials", "actual")]).await;
    linh.presses(linh.say("rounds-move-dispatch")).await;
    linh.sees("said-moved").await;
}
