#pragma once
// The arguments of one command: declared by name and bound to a member, parsed in any order, options before or
// after what stands alone. Unknown or repeated options and missing values are refused; nothing is abbreviated; a value
// may begin with a minus (`--first -8`, `--first=-8`).

#include "outcome/outcome.h"

#include <memory>
#include <optional>
#include <span>
#include <string>

namespace hammerline::command_line {

class Options {
public:
    /// `call` is what stands in the usage line: "hammerline check".
    Options(const std::string &call, const std::string &summary);
    ~Options();
    Options(const Options &) = delete;
    Options &operator=(const Options &) = delete;

    // Each target is written while parsing and must live until then.
    void positional(const std::string &name, const std::string &help, std::string &target);
    void positional(const std::string &name, const std::string &help, std::optional<std::string> &target);
    /// `name` without its dashes, `valueName` as in "SET". Required.
    void value(const std::string &name, const std::string &valueName, const std::string &help, std::string &target);
    /// The same, and may be left out.
    void value(const std::string &name, const std::string &valueName, const std::string &help,
               std::optional<std::string> &target);
    void flag(const std::string &name, const std::string &help, bool &target);

    enum class Wish { Run, Help };
    [[nodiscard]] outcome::Outcome<Wish> parse(std::span<const std::string> arguments);
    [[nodiscard]] std::string help() const;

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace hammerline::command_line
