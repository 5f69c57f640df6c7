-- What a factory submits to be approved: an option of a lab dip, a strike-off or a trim.
CREATE TABLE submission (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    -- The number of the revision that it was made to.
    revision BIGINT NOT NULL,
    kind TEXT NOT NULL,
    -- The artwork or the material; of a lab dip the part, with its colourway and its fabric.
    item TEXT NOT NULL,
    colourway TEXT,
    fabric TEXT,
    -- Through the options for one thing, from 1.
    number BIGINT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    language TEXT NOT NULL,
    note TEXT NOT NULL REFERENCES private_text (id),
    note_hash TEXT NOT NULL,
    -- L*a*b* with its light and observer, as JSON; NULL where nothing was read.
    reading TEXT,
    -- What it was read with; may be empty.
    instrument TEXT NOT NULL REFERENCES private_text (id),
    instrument_hash TEXT NOT NULL
);
CREATE INDEX submission_style ON submission (style, org);

CREATE TABLE submission_photo (
    submission TEXT NOT NULL REFERENCES submission (id),
    seq BIGINT NOT NULL,
    -- A private text of kind 'photo' whose content is the picture's digest.
    photo TEXT NOT NULL REFERENCES private_text (id),
    photo_hash TEXT NOT NULL,
    PRIMARY KEY (submission, seq)
);

-- One decision for each option; another is another option.
CREATE TABLE submission_decision (
    submission TEXT PRIMARY KEY REFERENCES submission (id),
    verdict TEXT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    reason TEXT NOT NULL REFERENCES private_text (id),
    reason_hash TEXT NOT NULL,
    -- The brand's limit of colour differences on that day, as JSON.
    colour_limit TEXT NOT NULL
);
