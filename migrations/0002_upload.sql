-- Who uploaded a photograph: one that no message brings has nobody else to be erased with.
CREATE TABLE photo_upload (
    file TEXT NOT NULL REFERENCES file (digest),
    person TEXT NOT NULL REFERENCES person (id),
    PRIMARY KEY (file, person)
);
CREATE INDEX photo_upload_person ON photo_upload (person);
