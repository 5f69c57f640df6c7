-- Who of the brand has which section of a draft open now: a row for each open page, which says from
-- time to time that it still is. A row that fell silent counts for nothing, and goes with the next
-- sign from any page of the style.
CREATE TABLE presence (
    style TEXT NOT NULL REFERENCES style (id),
    person TEXT NOT NULL REFERENCES person (id),
    -- One page in one window, by a name that it was given.
    seat TEXT NOT NULL,
    section TEXT NOT NULL,
    since TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    PRIMARY KEY (style, person, seat)
);
