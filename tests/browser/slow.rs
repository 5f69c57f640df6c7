//! A factory on a slow line.

use serde_json::json;

use crate::stage::Stage;

/// What a weak mobile line gives, and how long the text of a page may take on it.
const BITS_A_SECOND: u32 = 400_000;
const LATENCY_MS: u32 = 400;
const PATIENCE_MS: f64 = 3_000.0;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_revision_shows_its_text_within_three_seconds_on_a_slow_line() {
    let stage = Stage::demo().await;
    let iris = stage.of_demo("Designer", false).await;
    iris.opens("/styles").await;
    iris.presses("HT-204").await;
    iris.presses("Open revision").await;
    let revision = iris.path().await;
    iris.closes().await;

    let linh = stage.of_demo("Merchandiser, Sao Mai", true).await;
    linh.devtool("Network.enable", json!({})).await;
    linh.devtool("Network.clearBrowserCache", json!({})).await;
    let line = json!({"offline": false, "latency": LATENCY_MS,
        "downloadThroughput": BITS_A_SECOND / 8, "uploadThroughput": BITS_A_SECOND / 8});
    linh.devtool("Network.emulateNetworkConditions", line).await;
    // Once with nothing kept, and once as on the next visit.
    for visit in ["first", "next"] {
        linh.opens(&revision).await;
        linh.must_see("Size chart").await;
        let script = "const entries = performance.getEntriesByType('paint');
            const first = entries.find((it) => it.name === 'first-contentful-paint');
            const page = performance.getEntriesByType('navigation')[0];
            const parts = performance.getEntriesByType('resource');
            const sum = (all) => all.reduce((sum, it) => sum + it.transferSize, 0);
            const pictures = parts.filter((it) => it.initiatorType === 'img' || it.initiatorType === 'image');
            return [first.startTime, page.transferSize, sum(parts) - sum(pictures), sum(pictures)];";
        let said = linh.asks(script, &[]).await;
        let number = |at: usize| said[at].as_f64().expect("a number");
        println!(
            "{visit} visit: text after {:.0} ms; page {:.0} bytes, style and script {:.0}, pictures {:.0}",
            number(0),
            number(1),
            number(2),
            number(3)
        );
        assert!(number(0) < PATIENCE_MS, "{visit} visit: {} ms", number(0));
        assert!(number(1) + number(2) < 100_000.0, "{said}");
    }
    linh.closes().await;
}
