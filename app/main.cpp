// The program: the desktop, or one command. It hands the world (clock, random names, account name, streams) to both.

#include "command_line/command_line.h"
#include "main_window/guarded_application.h"
#include "main_window/main_window.h"

#include <pwd.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <random>

namespace {

using hammerline::main_window::GuardedApplication;

hammerline::readings::Instant now()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

std::string newUid()
{
    static constexpr char digits[] = "0123456789abcdef";
    std::random_device device;
    std::uniform_int_distribution<std::size_t> digit(0, 15);
    std::string uid(32, '0');
    for (char &one : uid)
        one = digits[digit(device)];
    return uid;
}

std::string valueOf(const char *variable)
{
    const char *value = std::getenv(variable);
    return value == nullptr ? std::string() : std::string(value);
}

/// Where the variables say nothing (a bare service, say), the system's own list of accounts does.
std::string accountName()
{
    for (const char *variable : {"USER", "LOGNAME"})
        if (const std::string name = valueOf(variable); !name.empty())
            return name;
    passwd entry{};
    passwd *found = nullptr;
    std::array<char, 16384> texts{};
    if (getpwuid_r(geteuid(), &entry, texts.data(), texts.size(), &found) != 0 || found == nullptr)
        return {};
    return found->pw_name;
}

/// The workshop's key lies with its owner's data (XDG base directories); empty where nobody says where that is.
std::string keyFile()
{
    const std::filesystem::path data = valueOf("XDG_DATA_HOME");
    if (data.is_absolute())
        return data / "hammerline" / "key.p12";
    const std::filesystem::path home = valueOf("HOME");
    return home.is_absolute() ? (home / ".local" / "share" / "hammerline" / "key.p12").string() : std::string();
}

/// Nothing, or one file that is there: whoever mistypes a command is told so and gets no window.
bool wantsDesktop(const std::vector<std::string> &arguments)
{
    if (arguments.empty())
        return true;
    std::error_code unseen;
    return arguments.size() == 1 && !hammerline::command_line::isCommand(arguments.front()) &&
           std::filesystem::exists(arguments.front(), unseen);
}

/// Qt would end the process where it finds no display.
bool hasDisplay()
{
    return !valueOf("DISPLAY").empty() || !valueOf("WAYLAND_DISPLAY").empty() || !valueOf("QT_QPA_PLATFORM").empty();
}

int runDesktop(int argc, char **argv, const std::vector<std::string> &arguments)
{
    if (!hasDisplay()) {
        std::cerr << "hammerline: there is no display to open the desktop on; see hammerline --help for commands\n";
        return hammerline::command_line::Refused;
    }
    GuardedApplication application(argc, argv);
    GuardedApplication::setApplicationVersion(HAMMERLINE_VERSION);
    std::optional<QString> logbook;
    if (!arguments.empty())
        logbook = QString::fromLocal8Bit(arguments.front().c_str());
    return hammerline::main_window::runDesktop(application, logbook, keyFile());
}

} // namespace

int main(int argc, char **argv)
{
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    if (wantsDesktop(arguments))
        return runDesktop(argc, argv, arguments);
    return hammerline::command_line::run(arguments, {.out = std::cout,
                                                     .err = std::cerr,
                                                     .now = now,
                                                     .newUid = newUid,
                                                     .person = accountName(),
                                                     .programVersion = HAMMERLINE_VERSION,
                                                     .keyFile = keyFile(),
                                                     .passphrase = valueOf("HAMMERLINE_PASSPHRASE")});
}
