#pragma once
// A whole JSON document of ours that describes one thing, read strictly (json_reader.h).

#include "exchange/inside/json_reader.h"

namespace hammerline::exchange {

template <typename Described>
struct DocumentForm {
    const char *format;
    int newestVersion;
    void (*read)(ObjectReader &, Described &);                  ///< every key but "format" and "version"
    std::vector<outcome::Fault> (*faultsOf)(const Described &); ///< of content; asked where every value could be read
    const char *place = "";                                     ///< before each of those
};

/// What the document describes, or all its faults; a key that `read` does not ask for is one.
template <typename Described>
[[nodiscard]] outcome::Outcome<Described> readDocument(std::string_view json, const std::string &file,
                                                       const DocumentForm<Described> &form)
{
    const auto tree = parseJson(json, file);
    if (!tree)
        return tree.faults();
    FaultList list{file, {}};
    ObjectReader reader(tree.value(), "", list);
    if (!readHead(reader, form.format, form.newestVersion))
        return list.faults;
    Described described;
    form.read(reader, described);
    reader.refuseOthers();
    if (list.faults.empty()) {
        for (const outcome::Fault &fault : form.faultsOf(described))
            list.add("", form.place + fault.problem);
    }
    if (!list.faults.empty())
        return list.faults;
    return described;
}

} // namespace hammerline::exchange
