#include "logbook/inside/dossier_rows.h"

#include "logbook/inside/taker.h"

namespace hammerline::logbook::inside {

namespace {

Cell text(std::string_view from)
{
    return std::string(from);
}

std::optional<dossier::Grade> gradeOf(std::optional<std::int64_t> stored, Taker &take)
{
    if (!stored)
        return std::nullopt;
    const bool onScale = *stored >= 1 && *stored <= 5;
    return take.known(onScale ? std::optional(static_cast<dossier::Grade>(*stored)) : std::nullopt);
}

/// Both ends or none.
std::optional<keyboard::NoteRange> rangeOf(Taker &take)
{
    const auto first = take.maybeNote();
    const auto last = take.maybeNote();
    if (!first)
        return std::nullopt;
    return keyboard::NoteRange{*first, take.known(last)};
}

} // namespace

std::vector<Cell> valuesOf(const dossier::WorkEntry &of)
{
    return {text(dossier::idOf(of.kind)),
            text(of.what),
            of.notes ? Cell(std::int64_t{of.notes->first.number()}) : Cell(),
            of.notes ? Cell(std::int64_t{of.notes->last.number()}) : Cell(),
            text(of.material),
            text(of.person),
            of.day ? Cell(dossier::isoDay(*of.day)) : Cell(),
            of.took ? Cell(std::int64_t{of.took->count()}) : Cell(),
            std::int64_t{of.departure ? 1 : 0},
            text(of.why),
            text(of.remark)};
}

std::vector<Cell> valuesOf(const dossier::Photograph &of)
{
    return {text(of.digest),  text(dossier::idOf(of.moment)), text(of.view),
            text(of.caption), std::int64_t{of.width},         std::int64_t{of.height}};
}

std::vector<Cell> valuesOf(const dossier::Condition &of)
{
    if (!of.said())
        return {};
    return {text(of.words), of.grade ? Cell(std::int64_t{static_cast<int>(*of.grade)}) : Cell()};
}

std::vector<Cell> valuesOf(const dossier::Sale &of)
{
    return {text(of.buyer), text(of.price), text(of.remark)};
}

dossier::WorkEntry workEntryOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    dossier::WorkEntry of;
    of.uid = std::get<std::string>(row.cells[1]);
    of.kind = take.known(dossier::findWorkKind(take.text()));
    of.what = take.text();
    of.notes = rangeOf(take);
    of.material = take.text();
    of.person = take.text();
    if (const std::string day = take.text(); !day.empty())
        of.day = take.known(dossier::parseIsoDay(day));
    if (const auto took = take.maybeNumber())
        of.took = std::chrono::minutes(*took);
    of.departure = take.number() != 0;
    of.why = take.text();
    of.remark = take.text();
    return of;
}

dossier::Photograph photographOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    dossier::Photograph of;
    of.uid = std::get<std::string>(row.cells[1]);
    of.digest = take.text();
    of.moment = take.known(dossier::findMoment(take.text()));
    of.view = take.text();
    of.caption = take.text();
    of.width = static_cast<int>(take.number());
    of.height = static_cast<int>(take.number());
    return of;
}

dossier::Conditions::value_type conditionOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    const auto moment = take.known(dossier::findMoment(std::get<std::string>(row.cells[1])));
    const auto area = take.known(dossier::findArea(std::get<std::string>(row.cells[2])));
    dossier::Condition of;
    of.words = take.text();
    of.grade = gradeOf(take.maybeNumber(), take);
    return {{moment, area}, of};
}

dossier::Sale saleOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    dossier::Sale of;
    of.buyer = take.text();
    of.price = take.text();
    of.remark = take.text();
    return of;
}

} // namespace hammerline::logbook::inside
