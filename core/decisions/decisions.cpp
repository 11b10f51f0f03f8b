#include "decisions/decisions.h"

#include <algorithm>

namespace hammerline::decisions {

namespace {

constexpr Kind kinds[] = {Kind::Out, Kind::Marginal, Kind::Uneven, Kind::Missing};

/// Missing and out are graver than marginal, and marginal than uneven.
int gravityOf(Kind kind)
{
    switch (kind) {
    case Kind::Out:
    case Kind::Missing:
        return 2;
    case Kind::Marginal:
        return 1;
    case Kind::Uneven:
        break;
    }
    return 0;
}

} // namespace

std::string_view idOf(Kind kind)
{
    switch (kind) {
    case Kind::Out:
        return "out";
    case Kind::Marginal:
        return "marginal";
    case Kind::Uneven:
        return "uneven";
    case Kind::Missing:
        break;
    }
    return "missing";
}

std::optional<Kind> findKind(std::string_view id)
{
    const auto *found = std::ranges::find(kinds, id, [](Kind kind) { return idOf(kind); });
    return found == std::end(kinds) ? std::nullopt : std::optional(*found);
}

std::optional<Kind> kindOf(const tolerance::Verdict &verdict)
{
    switch (verdict.status) {
    case tolerance::Status::Out:
        return Kind::Out;
    case tolerance::Status::Marginal:
        return Kind::Marginal;
    case tolerance::Status::Missing:
        return Kind::Missing;
    case tolerance::Status::In:
    case tolerance::Status::Unjudged:
        break;
    }
    return verdict.uneven ? std::optional(Kind::Uneven) : std::nullopt;
}

bool Decision::holds(const std::optional<units::Amount> &valueNow, Kind kindNow) const
{
    return value == valueNow && gravityOf(kindNow) <= gravityOf(kind);
}

std::string_view idOf(StandingChange::Change change)
{
    return change == StandingChange::Change::Signed ? "signed" : "reopened";
}

std::optional<StandingChange::Change> findChange(std::string_view id)
{
    for (const auto change : {StandingChange::Change::Signed, StandingChange::Change::Reopened})
        if (idOf(change) == id)
            return change;
    return std::nullopt;
}

bool isSigned(const Standing &standing)
{
    return signatureOf(standing) != nullptr;
}

int revisionOf(const Standing &standing)
{
    return standing.empty() ? 1 : standing.back().revision;
}

const StandingChange *signatureOf(const Standing &standing)
{
    if (standing.empty() || standing.back().change != StandingChange::Change::Signed)
        return nullptr;
    return &standing.back();
}

const Decision *findDecision(const std::vector<Decision> &among, catalogue::Quantity quantity, keyboard::Note note)
{
    const auto found =
        std::ranges::find_if(among, [&](const Decision &decision) { return decision.isOf(quantity, note); });
    return found == among.end() ? nullptr : &*found;
}

} // namespace hammerline::decisions
