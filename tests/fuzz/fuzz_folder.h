#pragma once
// A folder for the files of one fuzz target; it goes when the program ends.

#include <cstdlib>
#include <filesystem>
#include <string>

class FuzzFolder {
public:
    FuzzFolder()
    {
        std::string pattern = (std::filesystem::temp_directory_path() / "fuzz-XXXXXX").string();
        m_path = mkdtemp(pattern.data());
    }
    FuzzFolder(const FuzzFolder &) = delete;
    FuzzFolder &operator=(const FuzzFolder &) = delete;
    ~FuzzFolder()
    {
        std::error_code none;
        std::filesystem::remove_all(m_path, none);
    }
    [[nodiscard]] std::string file(const std::string &name) const { return m_path + "/" + name; }

private:
    std::string m_path;
};

inline const FuzzFolder &fuzzFolder()
{
    static const FuzzFolder own;
    return own;
}
