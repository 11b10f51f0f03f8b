#pragma once
// The last verdict, large: a gauge as on the strip, note, value, how far off, and the sentence. It stays until the
// next.

#include "bench/big_text.h"
#include "bench/entry_session.h"
#include "wording/number_form.h"

#include <QLabel>
#include <QWidget>

namespace hammerline::bench {

/// One tall gauge: band, target, mark at its height.
class GaugePicture : public QWidget {
    Q_OBJECT
public:
    explicit GaugePicture(QWidget *parent = nullptr);
    void setVerdict(const std::optional<tolerance::Verdict> &verdict);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    std::optional<tolerance::Verdict> m_verdict;
};

class VerdictBoard : public QWidget {
    Q_OBJECT
public:
    explicit VerdictBoard(QWidget *parent = nullptr);
    /// Note, value and verdict of what was entered, corrected or kept, and whether its takes differ too much.
    /// `instead`: what was typed for it before, asked about, and typed over; empty where nothing was.
    void tell(const Entered &entered, int takes, const wording::NumberForm &form, const QString &instead = {});
    /// A sentence alone: nothing entered yet, undone, withdrawn.
    void say(const QString &sentence);
    [[nodiscard]] bool hasRemark() const { return !m_remark->isHidden(); }

private:
    GaugePicture *m_gauge;
    BigText *m_note;
    BigText *m_value;
    BigText *m_change;
    BigText *m_sentence;
    QLabel *m_remark; ///< about the takes; most readings have none
};

} // namespace hammerline::bench
