#pragma once
// Where something that is not read waits and is not listed, since nobody asked for it: how much, and one press lists
// it. A pass cannot be signed while it waits.

#include <QPushButton>

namespace hammerline::review_desk {

class ItemModel;

class NotReadButton : public QPushButton {
    Q_OBJECT
public:
    /// `model` outlives it; `box` is the filter that lists what is not read.
    NotReadButton(const ItemModel &model, QAbstractButton *box, QWidget *parent = nullptr);

private:
    void follow();

    const ItemModel &m_model;
};

} // namespace hammerline::review_desk
