#pragma once
// The commands of Hammerline: what a script or a person at a terminal calls. No command needs a display.
//
// A command is an object (command.h) that takes its arguments and gives back an answer or the faults of what it was
// given; only `run` prints. What the world must supply (moments, random names, who sits there) is handed in, so that a
// test runs a command in-process and gets the same answer every time.

#include "readings/readings.h"

#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

namespace hammerline::command_line {

/// What `run` needs of the world.
struct Surroundings {
    std::ostream &out;
    std::ostream &err;
    std::function<readings::Instant()> now;
    std::function<std::string()> newUid; ///< 32 random hex digits
    std::string person{};                ///< who is named in the history; empty: nobody is known
    std::string programVersion{};
    /// Where the workshop's key lies, or is to lie; empty: no place is known, and --key-file must name one.
    std::string keyFile{};
    /// That the key is stored under, or is to be; empty: none.
    std::string passphrase{};
};

enum ExitStatus {
    Done = 0,
    NotConforming = 1, ///< `check`: a pair is out or missing; `verify`: altered, untrue, or by another key
    Refused = 2,       ///< the call or an input was refused; the reason is on `err`, nothing was written
};

/// True for the name of a command, and for --help and --version.
[[nodiscard]] bool isCommand(const std::string &word);

/// `arguments` without the program's name. The exit status. Never throws outcome::BrokenWorld: it becomes a
/// message on `err` and Refused.
[[nodiscard]] int run(const std::vector<std::string> &arguments, const Surroundings &surroundings);

} // namespace hammerline::command_line
