#pragma once
// In whose name the window writes: readings, decisions and signatures go down under it, so it is always in sight.

#include "main_window/workshop.h"

#include <QLabel>

namespace hammerline::main_window {

/// "In the name of Ada. Deeds, “Who is measuring” changes it."; empty person: that there is none.
[[nodiscard]] QString inTheNameOf(const std::string &person);

class PersonLabel : public QLabel {
    Q_OBJECT
public:
    explicit PersonLabel(const Workshop &workshop, QWidget *parent = nullptr);

private:
    void tell();

    const Workshop &m_workshop;
};

} // namespace hammerline::main_window
