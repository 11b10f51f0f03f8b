// The program: hands the world (clock, random names, account name, streams) to the commands.

#include "command_line/command_line.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <random>

namespace {

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

std::string accountName()
{
    for (const char *variable : {"USER", "LOGNAME"})
        if (const char *name = std::getenv(variable); name != nullptr && *name != '\0')
            return name;
    return {};
}

} // namespace

int main(int argc, char **argv)
{
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    return hammerline::command_line::run(arguments, {.out = std::cout,
                                                     .err = std::cerr,
                                                     .now = now,
                                                     .newUid = newUid,
                                                     .person = accountName(),
                                                     .programVersion = HAMMERLINE_VERSION});
}
