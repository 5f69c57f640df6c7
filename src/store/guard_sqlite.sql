-- What was published, said, measured, signed or decided only grows. SQLite.

CREATE TRIGGER IF NOT EXISTS revision_no_update BEFORE UPDATE ON revision
BEGIN SELECT RAISE(ABORT, 'the table revision only grows'); END;

CREATE TRIGGER IF NOT EXISTS revision_no_delete BEFORE DELETE ON revision
BEGIN SELECT RAISE(ABORT, 'the table revision only grows'); END;

CREATE TRIGGER IF NOT EXISTS revision_section_no_update BEFORE UPDATE ON revision_section
BEGIN SELECT RAISE(ABORT, 'the table revision_section only grows'); END;

CREATE TRIGGER IF NOT EXISTS revision_section_no_delete BEFORE DELETE ON revision_section
BEGIN SELECT RAISE(ABORT, 'the table revision_section only grows'); END;

CREATE TRIGGER IF NOT EXISTS withdrawal_no_update BEFORE UPDATE ON withdrawal
BEGIN SELECT RAISE(ABORT, 'the table withdrawal only grows'); END;

CREATE TRIGGER IF NOT EXISTS withdrawal_no_delete BEFORE DELETE ON withdrawal
BEGIN SELECT RAISE(ABORT, 'the table withdrawal only grows'); END;

CREATE TRIGGER IF NOT EXISTS acknowledgement_no_update BEFORE UPDATE ON acknowledgement
BEGIN SELECT RAISE(ABORT, 'the table acknowledgement only grows'); END;

CREATE TRIGGER IF NOT EXISTS acknowledgement_no_delete BEFORE DELETE ON acknowledgement
BEGIN SELECT RAISE(ABORT, 'the table acknowledgement only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_no_update BEFORE UPDATE ON message
BEGIN SELECT RAISE(ABORT, 'the table message only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_no_delete BEFORE DELETE ON message
BEGIN SELECT RAISE(ABORT, 'the table message only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_photo_no_update BEFORE UPDATE ON message_photo
BEGIN SELECT RAISE(ABORT, 'the table message_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_photo_no_delete BEFORE DELETE ON message_photo
BEGIN SELECT RAISE(ABORT, 'the table message_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_translation_no_update BEFORE UPDATE ON message_translation
BEGIN SELECT RAISE(ABORT, 'the table message_translation only grows'); END;

CREATE TRIGGER IF NOT EXISTS message_translation_no_delete BEFORE DELETE ON message_translation
BEGIN SELECT RAISE(ABORT, 'the table message_translation only grows'); END;

CREATE TRIGGER IF NOT EXISTS piece_no_update BEFORE UPDATE ON piece
BEGIN SELECT RAISE(ABORT, 'the table piece only grows'); END;

CREATE TRIGGER IF NOT EXISTS piece_no_delete BEFORE DELETE ON piece
BEGIN SELECT RAISE(ABORT, 'the table piece only grows'); END;

CREATE TRIGGER IF NOT EXISTS measurement_no_update BEFORE UPDATE ON measurement
BEGIN SELECT RAISE(ABORT, 'the table measurement only grows'); END;

CREATE TRIGGER IF NOT EXISTS measurement_no_delete BEFORE DELETE ON measurement
BEGIN SELECT RAISE(ABORT, 'the table measurement only grows'); END;

CREATE TRIGGER IF NOT EXISTS skip_no_update BEFORE UPDATE ON skip
BEGIN SELECT RAISE(ABORT, 'the table skip only grows'); END;

CREATE TRIGGER IF NOT EXISTS skip_no_delete BEFORE DELETE ON skip
BEGIN SELECT RAISE(ABORT, 'the table skip only grows'); END;

CREATE TRIGGER IF NOT EXISTS piece_photo_no_update BEFORE UPDATE ON piece_photo
BEGIN SELECT RAISE(ABORT, 'the table piece_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS piece_photo_no_delete BEFORE DELETE ON piece_photo
BEGIN SELECT RAISE(ABORT, 'the table piece_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS signature_no_update BEFORE UPDATE ON signature
BEGIN SELECT RAISE(ABORT, 'the table signature only grows'); END;

CREATE TRIGGER IF NOT EXISTS signature_no_delete BEFORE DELETE ON signature
BEGIN SELECT RAISE(ABORT, 'the table signature only grows'); END;

CREATE TRIGGER IF NOT EXISTS decision_no_update BEFORE UPDATE ON decision
BEGIN SELECT RAISE(ABORT, 'the table decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS decision_no_delete BEFORE DELETE ON decision
BEGIN SELECT RAISE(ABORT, 'the table decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS dispatch_no_update BEFORE UPDATE ON dispatch
BEGIN SELECT RAISE(ABORT, 'the table dispatch only grows'); END;

CREATE TRIGGER IF NOT EXISTS dispatch_no_delete BEFORE DELETE ON dispatch
BEGIN SELECT RAISE(ABORT, 'the table dispatch only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_no_update BEFORE UPDATE ON submission
BEGIN SELECT RAISE(ABORT, 'the table submission only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_no_delete BEFORE DELETE ON submission
BEGIN SELECT RAISE(ABORT, 'the table submission only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_photo_no_update BEFORE UPDATE ON submission_photo
BEGIN SELECT RAISE(ABORT, 'the table submission_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_photo_no_delete BEFORE DELETE ON submission_photo
BEGIN SELECT RAISE(ABORT, 'the table submission_photo only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_decision_no_update BEFORE UPDATE ON submission_decision
BEGIN SELECT RAISE(ABORT, 'the table submission_decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS submission_decision_no_delete BEFORE DELETE ON submission_decision
BEGIN SELECT RAISE(ABORT, 'the table submission_decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS seal_no_update BEFORE UPDATE ON seal
BEGIN SELECT RAISE(ABORT, 'the table seal only grows'); END;

CREATE TRIGGER IF NOT EXISTS seal_no_delete BEFORE DELETE ON seal
BEGIN SELECT RAISE(ABORT, 'the table seal only grows'); END;

CREATE TRIGGER IF NOT EXISTS seal_piece_no_update BEFORE UPDATE ON seal_piece
BEGIN SELECT RAISE(ABORT, 'the table seal_piece only grows'); END;

CREATE TRIGGER IF NOT EXISTS seal_piece_no_delete BEFORE DELETE ON seal_piece
BEGIN SELECT RAISE(ABORT, 'the table seal_piece only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_no_update BEFORE UPDATE ON inspection
BEGIN SELECT RAISE(ABORT, 'the table inspection only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_no_delete BEFORE DELETE ON inspection
BEGIN SELECT RAISE(ABORT, 'the table inspection only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_entry_no_update BEFORE UPDATE ON inspection_entry
BEGIN SELECT RAISE(ABORT, 'the table inspection_entry only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_entry_no_delete BEFORE DELETE ON inspection_entry
BEGIN SELECT RAISE(ABORT, 'the table inspection_entry only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_defect_no_update BEFORE UPDATE ON inspection_defect
BEGIN SELECT RAISE(ABORT, 'the table inspection_defect only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_defect_no_delete BEFORE DELETE ON inspection_defect
BEGIN SELECT RAISE(ABORT, 'the table inspection_defect only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_conclusion_no_update BEFORE UPDATE ON inspection_conclusion
BEGIN SELECT RAISE(ABORT, 'the table inspection_conclusion only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_conclusion_no_delete BEFORE DELETE ON inspection_conclusion
BEGIN SELECT RAISE(ABORT, 'the table inspection_conclusion only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_decision_no_update BEFORE UPDATE ON inspection_decision
BEGIN SELECT RAISE(ABORT, 'the table inspection_decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS inspection_decision_no_delete BEFORE DELETE ON inspection_decision
BEGIN SELECT RAISE(ABORT, 'the table inspection_decision only grows'); END;

CREATE TRIGGER IF NOT EXISTS ledger_no_update BEFORE UPDATE ON ledger
BEGIN SELECT RAISE(ABORT, 'the table ledger only grows'); END;

CREATE TRIGGER IF NOT EXISTS ledger_no_delete BEFORE DELETE ON ledger
BEGIN SELECT RAISE(ABORT, 'the table ledger only grows'); END;

CREATE TRIGGER IF NOT EXISTS correction_no_update BEFORE UPDATE ON correction
BEGIN SELECT RAISE(ABORT, 'the table correction only grows'); END;

CREATE TRIGGER IF NOT EXISTS correction_no_delete BEFORE DELETE ON correction
BEGIN SELECT RAISE(ABORT, 'the table correction only grows'); END;

CREATE TRIGGER IF NOT EXISTS record_key_no_update BEFORE UPDATE ON record_key
BEGIN SELECT RAISE(ABORT, 'the table record_key only grows'); END;

CREATE TRIGGER IF NOT EXISTS record_key_no_delete BEFORE DELETE ON record_key
BEGIN SELECT RAISE(ABORT, 'the table record_key only grows'); END;

CREATE TRIGGER IF NOT EXISTS translation_no_update BEFORE UPDATE ON translation
BEGIN SELECT RAISE(ABORT, 'the table translation only grows'); END;

CREATE TRIGGER IF NOT EXISTS translation_no_delete BEFORE DELETE ON translation
BEGIN SELECT RAISE(ABORT, 'the table translation only grows'); END;
