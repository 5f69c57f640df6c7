//! The service, a driver, and the windows that it opens.

use std::process::Stdio;
use std::sync::Arc;
use std::time::Duration;

use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, LoggingPrefsLogLevel};
use tokio::io::{AsyncBufReadExt, BufReader};
use tokio::process::{Child, Command};

use crate::service::Service;
use crate::window::Window;

/// A large screen and a phone, in CSS pixels.
const DESK: (u32, u32) = (1440, 900);
const PHONE: (u32, u32) = (360, 780);

/// The service, and the driver that opens windows on it.
pub struct Stage {
    pub service: Service,
    driver: Arc<Chromedriver>,
}

pub struct Chromedriver {
    address: String,
    _child: Child,
}

impl Stage {
    pub async fn opens() -> Stage {
        Stage::around(Service::starts()).await
    }

    /// On the demo.
    pub async fn demo() -> Stage {
        Stage::around(Service::demo()).await
    }

    async fn around(service: impl Future<Output = Service>) -> Stage {
        let driver = Chromedriver::starts();
        let (service, driver) = tokio::join!(service, driver);
        Stage {
            service,
            driver: Arc::new(driver),
        }
    }

    /// A window 1440 wide.
    pub async fn desk(&self, who: &str) -> Window {
        self.window(who, DESK, true).await
    }

    /// A window 360 wide, under a finger.
    pub async fn phone(&self, who: &str) -> Window {
        self.window(who, PHONE, true).await
    }

    /// A window for somebody of the demo, who comes in by their link.
    pub async fn of_demo(&self, who: &str, on_phone: bool) -> Window {
        let (link, name) = self.service.link(who);
        let window = match on_phone {
            true => self.phone(name).await,
            false => self.desk(name).await,
        };
        window.opens(link).await;
        window.presses("Come in").await;
        window.must_see("What needs me").await;
        window
    }

    /// A phone on which no script runs.
    pub async fn phone_without_script(&self, who: &str) -> Window {
        self.window(who, PHONE, false).await
    }

    /// A large screen on which no script runs.
    pub async fn desk_without_script(&self, who: &str) -> Window {
        self.window(who, DESK, false).await
    }

    async fn window(&self, who: &str, (width, height): (u32, u32), script: bool) -> Window {
        let profile = tempfile::tempdir().expect("a temporary folder");
        let mut wanted = DesiredCapabilities::chrome();
        wanted.set_binary("/usr/bin/chromium").expect("settings");
        wanted
            .set_browser_log_level(LoggingPrefsLogLevel::All)
            .expect("settings");
        for flag in [
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
        ] {
            wanted.add_arg(flag).expect("settings");
        }
        let folder = format!("--user-data-dir={}", profile.path().display());
        wanted.add_arg(&folder).expect("settings");
        let window = format!("--window-size={width},{height}");
        wanted.add_arg(&window).expect("settings");
        let driver = WebDriver::new(&self.driver.address, wanted).await;
        let window = Window {
            driver: driver.expect("Chromium opens"),
            who: who.to_owned(),
            address: self.service.address.clone(),
            width,
            script,
            _profile: profile,
            _chromedriver: self.driver.clone(),
        };
        // What still moves cannot be pressed.
        let still = json!({"features": [{"name": "prefers-reduced-motion", "value": "reduce"}]});
        window.devtool("Emulation.setEmulatedMedia", still).await;
        let phone = width == PHONE.0;
        let screen = json!({"width": width, "height": height,
            "deviceScaleFactor": if phone { 2 } else { 1 }, "mobile": phone});
        window
            .devtool("Emulation.setDeviceMetricsOverride", screen)
            .await;
        if phone {
            let touch = json!({"enabled": true, "maxTouchPoints": 1});
            window
                .devtool("Emulation.setTouchEmulationEnabled", touch)
                .await;
        }
        if !script {
            let off = json!({"value": true});
            window
                .devtool("Emulation.setScriptExecutionDisabled", off)
                .await;
        }
        window
    }
}

impl Chromedriver {
    async fn starts() -> Chromedriver {
        let mut child = Command::new("chromedriver")
            .arg("--port=0")
            .stdout(Stdio::piped())
            .kill_on_drop(true)
            .spawn()
            .expect("chromedriver is installed");
        let said = child.stdout.take().expect("piped");
        let mut said = BufReader::new(said).lines();
        let port = async {
            while let Some(line) = said.next_line().await.expect("text") {
                if let Some((_, port)) = line.split_once("successfully on port ") {
                    return port.trim_end_matches('.').to_owned();
                }
            }
            panic!("chromedriver ended before it listened");
        };
        let port = tokio::time::timeout(Duration::from_secs(30), port).await;
        let port = port.expect("chromedriver listens within 30 seconds");
        // It must not meet a closed pipe when it has something more to say.
        tokio::spawn(async move { while let Ok(Some(_)) = said.next_line().await {} });
        Chromedriver {
            address: format!("http://127.0.0.1:{port}"),
            _child: child,
        }
    }
}
