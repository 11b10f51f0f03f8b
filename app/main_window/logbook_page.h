#pragma once
// The page of an open logbook: the workshop at the left, the views in the centre, the strip across the foot.

#include "main_window/strip_area.h"
#include "main_window/views.h"
#include "main_window/workshop_panel.h"

#include <QWidget>

namespace hammerline::main_window {

class LogbookPage : public QWidget {
    Q_OBJECT
public:
    explicit LogbookPage(Workshop &workshop, QWidget *parent = nullptr);

    [[nodiscard]] WorkshopPanel &panel() const { return *m_panel; }
    [[nodiscard]] Views &views() const { return *m_views; }
    [[nodiscard]] StripArea &foot() const { return *m_foot; }
    void setForm(const wording::NumberForm &form);

private:
    WorkshopPanel *m_panel;
    Views *m_views;
    StripArea *m_foot;
};

} // namespace hammerline::main_window
