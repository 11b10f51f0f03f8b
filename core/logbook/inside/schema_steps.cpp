#include "logbook/inside/schema_steps.h"

namespace hammerline::logbook::inside {

namespace {

// AUTOINCREMENT keeps the largest number ever given beside the table, so that entries cut off the end are missed.
// Every other table but picture is a version table, see version_table.h; nothing in them is bound to be there, since a
// withdrawn version has no values.
constexpr std::string_view step1 = R"sql(
CREATE TABLE history(
  deed INTEGER PRIMARY KEY AUTOINCREMENT,
  at INTEGER NOT NULL,
  person TEXT NOT NULL,
  name TEXT NOT NULL,
  subject TEXT NOT NULL,
  reason TEXT NOT NULL,
  undoes INTEGER REFERENCES history(deed),
  instrument INTEGER,
  pass INTEGER,
  marks BLOB NOT NULL,
  digest BLOB NOT NULL
) STRICT;

CREATE TABLE instrument(
  instrument INTEGER NOT NULL,
  version INTEGER NOT NULL,
  uid TEXT, name TEXT, action TEXT, first_note INTEGER, last_note INTEGER, sections TEXT,
  maker TEXT, model TEXT, serial TEXT, year INTEGER, size INTEGER, stringing TEXT, dampers TEXT,
  condition TEXT, owner TEXT, remark TEXT, state TEXT, tolerance_id TEXT, tolerance_text TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE pass(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  uid TEXT, instrument INTEGER, purpose TEXT, began INTEGER, person TEXT, celsius INTEGER, humidity INTEGER,
  gauge TEXT, gauge_resolution INTEGER, gauge_uncertainty INTEGER, dip_datum TEXT, drop_datum TEXT, unit TEXT,
  remark TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;
CREATE INDEX pass_of_instrument ON pass(instrument);

CREATE TABLE reading(
  pass INTEGER NOT NULL,
  quantity INTEGER NOT NULL,
  note INTEGER NOT NULL,
  take INTEGER NOT NULL,
  version INTEGER NOT NULL,
  value INTEGER, typed TEXT, remark TEXT, person TEXT, at INTEGER, origin INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, quantity, note, take, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE fault_mark(
  pass INTEGER NOT NULL,
  note INTEGER NOT NULL,
  fault TEXT NOT NULL,
  version INTEGER NOT NULL,
  marked INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, note, fault, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE pass_tolerance(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  tolerance_id TEXT, tolerance_text TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE kept_plan(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  inputs TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE work_done(
  pass INTEGER NOT NULL,
  item TEXT NOT NULL,
  version INTEGER NOT NULL,
  seconds INTEGER, person TEXT, at INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, item, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE pass_route(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  route TEXT, typing TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE confirmed_slip(
  pass INTEGER NOT NULL,
  quantity INTEGER NOT NULL,
  note INTEGER NOT NULL,
  take INTEGER NOT NULL,
  version INTEGER NOT NULL,
  value INTEGER, suspicion TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, quantity, note, take, version)
) STRICT, WITHOUT ROWID;
)sql";

// What the lead's desk writes: a pass signed and reopened, items accepted or sent back, samples drawn. How an
// instrument's action is set up for planning. And the file of an instrument; its pictures are named by their SHA-256 in
// the rows of the photographs, which the history covers, and so need no deed of their own (see pictures.h).
constexpr std::string_view step2 = R"sql(
CREATE TABLE pass_standing(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  standing TEXT, revision INTEGER, person TEXT, at INTEGER, reason TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE concession(
  pass INTEGER NOT NULL,
  quantity INTEGER NOT NULL,
  note INTEGER NOT NULL,
  version INTEGER NOT NULL,
  reason TEXT, value INTEGER, kind TEXT, person TEXT, at INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, quantity, note, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE sent_back(
  pass INTEGER NOT NULL,
  quantity INTEGER NOT NULL,
  note INTEGER NOT NULL,
  version INTEGER NOT NULL,
  word TEXT, value INTEGER, kind TEXT, person TEXT, at INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, quantity, note, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE spot_check(
  pass INTEGER NOT NULL,
  version INTEGER NOT NULL,
  checked INTEGER, seed INTEGER, size INTEGER, notes TEXT, quantities TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(pass, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE action_setup(
  instrument INTEGER NOT NULL,
  version INTEGER NOT NULL,
  setup TEXT, aim TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE work_entry(
  instrument INTEGER NOT NULL,
  entry TEXT NOT NULL,
  version INTEGER NOT NULL,
  kind TEXT, what TEXT, first_note INTEGER, last_note INTEGER, material TEXT, person TEXT, day TEXT, minutes INTEGER,
  departure INTEGER, why TEXT, remark TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, entry, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE condition_said(
  instrument INTEGER NOT NULL,
  moment TEXT NOT NULL,
  area TEXT NOT NULL,
  version INTEGER NOT NULL,
  words TEXT, grade INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, moment, area, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE photograph(
  instrument INTEGER NOT NULL,
  photograph TEXT NOT NULL,
  version INTEGER NOT NULL,
  digest TEXT, moment TEXT, view TEXT, caption TEXT, width INTEGER, height INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, photograph, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE sale(
  instrument INTEGER NOT NULL,
  version INTEGER NOT NULL,
  buyer TEXT, price TEXT, remark TEXT,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(instrument, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE picture(
  digest TEXT PRIMARY KEY NOT NULL,
  jpeg BLOB NOT NULL
) STRICT;
)sql";

// Gauge studies. Their deeds name neither instrument nor pass; a row is found by its deed.
constexpr std::string_view step3 = R"sql(
CREATE TABLE gauge_study(
  study INTEGER NOT NULL,
  version INTEGER NOT NULL,
  gauge TEXT, resolution INTEGER, quantity INTEGER, people TEXT, notes TEXT, takes INTEGER, seed INTEGER, unit TEXT,
  instrument INTEGER, person TEXT, at INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(study, version)
) STRICT, WITHOUT ROWID;
CREATE INDEX gauge_study_of_deed ON gauge_study(deed);

CREATE TABLE gauge_trial(
  study INTEGER NOT NULL,
  note INTEGER NOT NULL,
  person TEXT NOT NULL,
  take INTEGER NOT NULL,
  version INTEGER NOT NULL,
  value INTEGER, typed TEXT, at INTEGER,
  deed INTEGER NOT NULL REFERENCES history(deed),
  PRIMARY KEY(study, note, person, take, version)
) STRICT, WITHOUT ROWID;
CREATE INDEX gauge_trial_of_deed ON gauge_trial(deed);
)sql";

// The deeds about one instrument are found without going through all: what checks or hands over one instrument of
// thousands takes milliseconds.
constexpr std::string_view step4 = R"sql(
CREATE INDEX deed_about_instrument ON history(instrument) WHERE instrument IS NOT NULL;
)sql";

constexpr std::string_view steps[] = {step1, step2, step3, step4};

} // namespace

std::span<const std::string_view> schemaSteps()
{
    return steps;
}

} // namespace hammerline::logbook::inside
