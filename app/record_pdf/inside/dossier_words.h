#pragma once
// The words of an instrument's file on paper: kinds of work, areas, grades, moments.

#include "dossier/dossier.h"

#include <QLocale>
#include <QString>

namespace hammerline::record_pdf {

[[nodiscard]] QString nameOf(dossier::WorkKind kind); ///< "renewed"
[[nodiscard]] QString nameOf(dossier::Area area);     ///< "Soundboard"
[[nodiscard]] QString nameOf(dossier::Grade grade);   ///< "serviceable"
[[nodiscard]] QString nameOf(dossier::Moment moment); ///< "As received"
/// "renewed: hammers, A0 to C8".
[[nodiscard]] QString workText(const dossier::WorkEntry &entry);
/// "whole instrument" where it is on no range.
[[nodiscard]] QString rangeText(const dossier::WorkEntry &entry);
/// "2 h 30 min"; empty where it is not known.
[[nodiscard]] QString tookText(const dossier::WorkEntry &entry);
/// Empty where the day is not known.
[[nodiscard]] QString dayOf(const dossier::WorkEntry &entry, const QLocale &locale);

} // namespace hammerline::record_pdf
