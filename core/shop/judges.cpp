#include "shop/judges.h"

#include "exchange/tolerance_json.h"

namespace hammerline::shop {

namespace {

constexpr std::size_t mostJudges = 64; ///< each some hundred kilobytes

} // namespace

const tolerance::Judge *Judges::judgeFor(const std::string &text, const std::string &name)
{
    if (text.empty())
        return nullptr;
    auto known = m_judges.find(text);
    if (known == m_judges.end()) {
        if (m_judges.size() >= mostJudges)
            m_judges.clear();
        known = m_judges.emplace(text, std::nullopt).first;
        if (const auto set = exchange::readToleranceSet(text, name))
            known->second.emplace(set.value());
    }
    return known->second ? &*known->second : nullptr;
}

} // namespace hammerline::shop
