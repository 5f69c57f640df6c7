//! Drawings with their letters, dimension lines and circles.

use super::block::{Block, Figure, Page, Spot, Words};
use super::writer::{Writer, letter};
use crate::spec::document::{Drawing, View};
use crate::spec::drawn::{dimension, leaders, middle, tall};

/// What is drawn over a drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum What {
    Bare,
    /// Everything that is marked on it.
    Marked,
}

/// In the units of which a drawing's width has 10 000.
const THIN: u32 = 14;

impl Writer<'_> {
    pub(super) fn drawing_title(&self, drawing: &Drawing) -> Words {
        match drawing.title.as_str() {
            "" => self.each(|t| t.name(&drawing.view)),
            title => self.named(title),
        }
    }

    /// Nothing where there is no picture of it.
    pub(super) fn figure(&self, drawing: &Drawing, what: What, height: f64) -> Option<Figure> {
        let title = self.drawing_title(drawing);
        let number = self.spec.drawings.drawings.iter();
        let number = number.zip(1..).find(|(it, _)| it.id == drawing.id);
        let number = number.map_or(0, |(_, number)| number);
        let marked = what == What::Marked;
        Some(Figure {
            alt: format!("{} {}", self.spec.header.number, title.a),
            title: Words {
                a: format!("{number} · {}", title.a),
                ..title
            },
            picture: self.picture_of(&drawing.file)?,
            aspect: f64::from(drawing.width.max(1)) / f64::from(drawing.height.max(1)),
            height,
            overlay: match marked {
                true => self.overlay(drawing),
                false => String::new(),
            },
            letters: match marked {
                true => self.letters(drawing),
                false => Vec::new(),
            },
        })
    }

    /// Each drawing that has something marked on it, as large as a page takes.
    pub(super) fn marked_drawings(&self, wanted: impl Fn(&Drawing) -> bool) -> Vec<Page> {
        let drawings = self.spec.drawings.drawings.iter();
        let marked = drawings.filter(|it| wanted(it));
        let figures = marked.filter_map(|it| self.figure(it, What::Marked, 145.0));
        figures
            .map(|figure| Page::of(vec![Block::Figure(figure)]))
            .collect()
    }

    pub(super) fn blow_ups(&self) -> Vec<Block> {
        let details = self.spec.drawings.drawings.iter();
        let details = details.filter(|it| it.view == View::Detail);
        let figures: Vec<Figure> = details
            .filter_map(|it| self.figure(it, What::Marked, 68.0))
            .collect();
        let mut rows = Vec::new();
        let mut figures = figures.into_iter().peekable();
        while figures.peek().is_some() {
            rows.push(Block::Figures {
                figures: figures.by_ref().take(3).collect(),
            });
        }
        rows
    }

    /// Letters where they were put, and on the middle of a line whose letter was put nowhere.
    fn letters(&self, drawing: &Drawing) -> Vec<Spot> {
        let own: Vec<_> = drawing.markers.iter().map(|it| &it.item).collect();
        let put = drawing.markers.iter();
        let put = put.map(|marker| (&marker.item, marker.x, marker.y));
        let carried = drawing.lines.iter();
        let carried = carried
            .filter(|line| !own.contains(&&line.item))
            .map(|line| {
                let at = middle(line);
                (&line.item, at.x, at.y)
            });
        let circles = drawing.blow_ups.iter().filter_map(|circle| {
            let mut numbered = self.spec.drawings.drawings.iter().zip(1..);
            let (_, number) = numbered.find(|(it, _)| it.id == circle.drawing)?;
            // On the ring, up and to the right.
            let out = f64::from(circle.radius) * std::f64::consts::FRAC_1_SQRT_2;
            let size = (drawing.width, drawing.height);
            let down = f64::from(tall(size, circle.at.y)) - out;
            let all = f64::from(tall(size, 10_000)).max(1.0);
            Some(Spot {
                letter: super::block::Letter {
                    text: number.to_string(),
                    shape: "larger",
                },
                x: (f64::from(circle.at.x) + out) / 10_000.0,
                y: down / all,
                mark: false,
            })
        });
        let lettered = put.chain(carried).filter_map(|(id, x, y)| {
            let item = self.spec.item(id)?;
            Some(Spot {
                letter: letter(item)?,
                x: f64::from(x) / 10_000.0,
                y: f64::from(y) / 10_000.0,
                mark: self.touched.contains(id),
            })
        });
        lettered.chain(circles).collect()
    }

    /// Lines with their arrow heads, leader lines and circles.
    fn overlay(&self, drawing: &Drawing) -> String {
        let size = (drawing.width, drawing.height);
        let height = tall(size, 10_000).max(1);
        let mut svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10000 {height}\" \
             width=\"10000\" height=\"{height}\"><g fill=\"none\" stroke=\"#000\" \
             stroke-width=\"{THIN}\">"
        );
        let leads = leaders(drawing);
        if !leads.is_empty() {
            svg += &format!("<path stroke-dasharray=\"40 30\" d=\"{leads}\"/>");
        }
        for circle in &drawing.blow_ups {
            let (x, y) = (circle.at.x, tall(size, circle.at.y));
            svg += &format!("<circle cx=\"{x}\" cy=\"{y}\" r=\"{}\"/>", circle.radius);
        }
        for line in &drawing.lines {
            let shown = dimension(size, line);
            svg += &format!("<path d=\"{}\"/>", shown.path);
            for head in shown.heads {
                let (x, y, turn) = (head.x, head.y, head.turn);
                svg += &format!(
                    "<path transform=\"translate({x} {y}) rotate({turn})\" fill=\"#000\" \
                     stroke=\"none\" d=\"M0 0L-170 48L-170 -48z\"/>"
                );
                if head.outside {
                    svg += &format!(
                        "<path transform=\"translate({x} {y}) rotate({turn})\" d=\"M-170 0H-420\"/>"
                    );
                }
            }
        }
        svg += "</g></svg>";
        svg
    }
}
