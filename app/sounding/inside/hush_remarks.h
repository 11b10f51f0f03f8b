#pragma once
// Qt remarks on standard error that there is no sound server or no speech engine. To a computer without either that is
// no news: while one of these lives, such remarks are dropped and all others pass.

namespace hammerline::sounding {

class HushRemarks {
public:
    HushRemarks();
    ~HushRemarks();
    HushRemarks(const HushRemarks &) = delete;
    HushRemarks &operator=(const HushRemarks &) = delete;

private:
    bool m_outermost = false;
};

} // namespace hammerline::sounding
