#pragma once
// A forger who knows how a hand-over vouches for itself: it gets every digest anew, and the one form that its text has,
// as core/logbook/hand_over.h tells it and by another way than the logbook's own. A dump of nlohmann's sorted objects
// is the canonical form of RFC 8785 as long as there are only texts, whole numbers and ASCII names.

#include "logbook/inside/sha256.h"

#include <functional>
#include <nlohmann/json.hpp>
#include <string>

namespace hammerline::support {

inline std::string sha256Of(const std::string &text)
{
    logbook::inside::Sha256 digest;
    digest.add(text);
    return logbook::inside::hexOf(digest.finish());
}

/// `document`: any object.
inline std::string vouchedAnew(nlohmann::json document)
{
    std::string previous(64, '0');
    for (auto &deed : document["deeds"]) {
        if (!deed.is_object())
            continue;
        auto vouched = deed;
        vouched.erase("digest");
        vouched["previous"] = previous;
        deed["digest"] = previous = sha256Of(vouched.dump());
    }
    document.erase("digest");
    document["digest"] = sha256Of(document.dump());
    std::string text;
    for (const char *name : {"format", "version", "digest", "instrument", "without"})
        if (document.contains(name))
            text += (text.empty() ? "{\"" : ",\"") + std::string(name) + "\":" + document[name].dump();
    for (const char *name : {"deeds", "pictures"}) {
        text += ",\n\"" + std::string(name) + "\":[";
        const char *separator = "\n";
        for (const auto &each : document[name]) {
            text += separator + each.dump();
            separator = ",\n";
        }
        text += ']';
    }
    return text + "}\n";
}

/// The document after `change`, vouched for anew.
inline std::string forged(const std::string &document, const std::function<void(nlohmann::json &)> &change)
{
    auto json = nlohmann::json::parse(document);
    change(json);
    return vouchedAnew(std::move(json));
}

} // namespace hammerline::support
