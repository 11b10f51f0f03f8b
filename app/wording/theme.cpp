// The theme: a QPalette by role and the little that a palette cannot say.
#include "wording/palette.h"

#include <QApplication>
#include <QStyleFactory>

namespace hammerline::wording {

namespace {

QPalette widgetPalette(const Palette &roles)
{
    QPalette palette;
    palette.setColor(QPalette::Window, roles.paper);
    palette.setColor(QPalette::WindowText, roles.ink);
    palette.setColor(QPalette::Base, roles.field);
    palette.setColor(QPalette::AlternateBase, roles.paper);
    palette.setColor(QPalette::Text, roles.ink);
    palette.setColor(QPalette::PlaceholderText, roles.quiet);
    palette.setColor(QPalette::Button, roles.sharp);
    palette.setColor(QPalette::ButtonText, roles.ink);
    palette.setColor(QPalette::BrightText, roles.tooLarge);
    palette.setColor(QPalette::ToolTipBase, roles.field);
    palette.setColor(QPalette::ToolTipText, roles.ink);
    palette.setColor(QPalette::Highlight, roles.ink);
    palette.setColor(QPalette::HighlightedText, roles.paper);
    palette.setColor(QPalette::Link, roles.tooSmall);
    palette.setColor(QPalette::LinkVisited, roles.tooSmall);
    palette.setColor(QPalette::Light, roles.field);
    palette.setColor(QPalette::Midlight, roles.faintLine);
    palette.setColor(QPalette::Mid, roles.line);
    palette.setColor(QPalette::Dark, roles.line);
    palette.setColor(QPalette::Shadow, roles.ink);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, roles.line);
    return palette;
}

/// Corners of 2 px, one line instead of nested boxes, and a focus that can be seen from the bench.
QString styleSheet(const Palette &roles)
{
    static const QString pattern = QStringLiteral(R"(
QToolTip { background: %1; color: %2; border: 1px solid %3; padding: 4px; }
QLineEdit, QPlainTextEdit, QComboBox, QSpinBox, QDoubleSpinBox, QDateTimeEdit {
    background: %1; border: 1px solid %3; border-radius: 2px; padding: 4px; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QSpinBox:focus, QDoubleSpinBox:focus, QDateTimeEdit:focus {
    border: 2px solid %2; padding: 3px; }
QPushButton { background: %4; border: 1px solid %3; border-radius: 2px; padding: 6px 12px; }
QPushButton:hover { border-color: %2; }
QPushButton:focus { border: 2px solid %2; padding: 5px 11px; }
QPushButton:default { background: %2; color: %5; border-color: %2; }
QPushButton:default:focus { border: 2px solid %6; }
QPushButton:disabled { color: %3; background: %5; border-color: %7; }
QHeaderView::section { background: %5; color: %8; border: none; border-bottom: 1px solid %3; padding: 4px 8px; }
QTableView, QTreeView, QListView { border: none; gridline-color: %7; }
QGroupBox { border: none; margin-top: 20px; font-weight: bold; }
QGroupBox::title { subcontrol-origin: margin; left: 0; }
QStatusBar::item { border: none; }
)");
    return pattern.arg(roles.field.name(), roles.ink.name(), roles.line.name(), roles.sharp.name(), roles.paper.name(),
                       roles.tooSmall.name(), roles.faintLine.name(), roles.quiet.name());
}

} // namespace

void applyTheme(QApplication &application, Theme theme)
{
    const Palette &roles = paletteOf(theme);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(widgetPalette(roles));
    QApplication::setFont(font(TextSize::Body));
    application.setStyleSheet(styleSheet(roles));
}

} // namespace hammerline::wording
