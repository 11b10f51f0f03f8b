#pragma once
// A folder of its own for each test, a workshop with one piano, and a raw connection for what other programs do.

#include "logbook/logbook.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <cstdlib>
#include <filesystem>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

namespace hammerline::logbook {

inline readings::Instant moment(int minutes)
{
    return readings::Instant(std::chrono::milliseconds(1'770'000'000'000)) + std::chrono::minutes(minutes);
}
inline const Stamp ada{moment(0), "Ada"};
inline const Stamp ben{moment(5), "Ben"};

/// For hand-overs whose tolerance sets are not what is tested.
inline const SetCheck anySet = [](const std::string &, const std::string &) { return std::vector<outcome::Fault>(); };

inline readings::Place letOff(int note, int take = 1)
{
    return {catalogue::Quantity::LetOff, keyboard::Note(note), take};
}

inline readings::Reading reading(readings::Place place, std::int64_t nanometres, std::string typed = "as typed")
{
    return {.place = place, .value = units::Length::nanometres(nanometres), .typed = std::move(typed)};
}

inline instrument::Instrument upright(std::string name = "Upright in the corner")
{
    return {.name = std::move(name), .action = catalogue::ActionKind::Vertical};
}

/// SQL on the file as any other program would run it.
class RawDatabase {
public:
    explicit RawDatabase(const std::string &path)
    {
        if (sqlite3_open(path.c_str(), &m_database) != SQLITE_OK)
            throw std::runtime_error("cannot open " + path);
        sqlite3_exec(m_database, "PRAGMA foreign_keys = OFF", nullptr, nullptr, nullptr);
    }
    RawDatabase(const RawDatabase &) = delete;
    RawDatabase &operator=(const RawDatabase &) = delete;
    ~RawDatabase() { sqlite3_close(m_database); }

    /// Rows as texts, NULL as "NULL".
    std::vector<std::vector<std::string>> rows(const std::string &sql)
    {
        std::vector<std::vector<std::string>> found;
        char *message = nullptr;
        const int result = sqlite3_exec(m_database, sql.c_str(), &take, &found, &message);
        const std::string said = message == nullptr ? "" : message;
        sqlite3_free(message);
        if (result != SQLITE_OK)
            throw std::runtime_error(sql + ": " + said);
        return found;
    }
    void run(const std::string &sql) { static_cast<void>(rows(sql)); }
    std::string one(const std::string &sql) { return rows(sql).at(0).at(0); }

private:
    static int take(void *into, int columns, char **texts, char ** /*names*/)
    {
        std::vector<std::string> row;
        for (int column = 0; column < columns; ++column)
            row.emplace_back(texts[column] == nullptr ? "NULL" : texts[column]);
        static_cast<std::vector<std::vector<std::string>> *>(into)->push_back(std::move(row));
        return 0;
    }
    sqlite3 *m_database = nullptr;
};

class LogbookTest : public testing::Test {
protected:
    LogbookTest()
    {
        std::string pattern = (std::filesystem::temp_directory_path() / "logbook-XXXXXX").string();
        folder = mkdtemp(pattern.data());
    }
    ~LogbookTest() override
    {
        std::error_code none;
        std::filesystem::remove_all(folder, none);
    }

    [[nodiscard]] std::string file(const std::string &name = "shop.hammerline") const
    {
        return (folder / name).string();
    }
    [[nodiscard]] Logbook created() const { return Logbook::create(file(), ada).value(); }
    /// With an instrument 1 and a pass 1.
    [[nodiscard]] Logbook withPass() const
    {
        Logbook logbook = created();
        static_cast<void>(logbook.addInstrument(upright(), ada));
        static_cast<void>(logbook.beginPass({.instrument = 1, .began = moment(1), .person = "Ada"}, ada));
        return logbook;
    }
    [[nodiscard]] static std::string messageOf(const std::function<void()> &act)
    {
        try {
            act();
        } catch (const outcome::BrokenWorld &broken) {
            return broken.what();
        }
        return "nothing was thrown";
    }

    std::filesystem::path folder;
};

} // namespace hammerline::logbook
