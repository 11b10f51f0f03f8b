#pragma once
// The file of an instrument as the parts of a record's JSON. The sale is put only where something is said of it.

#include "dossier/dossier.h"
#include "exchange/inside/json_writer.h"

namespace hammerline::exchange {

/// "work", "condition", "photographs" and "sale"; what is empty puts nothing.
void putDossier(OrderedJson &json, const dossier::Dossier &dossier);

} // namespace hammerline::exchange
