#include "main_window/rejudge_run.h"

#include <algorithm>
#include <chrono>
#include <thread>

namespace hammerline::main_window {

namespace {

constexpr unsigned mostThreads = 4; ///< beyond them the disk is the limit

} // namespace

void RejudgeRun::begin(const std::string &path, shop::Asked asked)
{
    stop();
    m_course = std::make_unique<shop::Course>();
    const unsigned threads = std::clamp(std::thread::hardware_concurrency(), 1U, mostThreads);
    m_result = std::async(std::launch::async, [path, asked = std::move(asked), threads, course = m_course.get()] {
        return shop::judgeShop(path, asked, threads, *course);
    });
}

void RejudgeRun::stop()
{
    if (!m_result.valid())
        return;
    m_course->stop = true;
    m_result.wait();
    m_result = {}; // what broke a run that nobody waits for is nobody's trouble
}

std::optional<shop::ShopJudged> RejudgeRun::take()
{
    if (!m_result.valid() || m_result.wait_for(std::chrono::seconds(0)) != std::future_status::ready)
        return std::nullopt;
    return m_result.get();
}

int RejudgeRun::percent() const
{
    const std::size_t all = m_course ? m_course->all.load() : 0;
    return all == 0 ? 0 : static_cast<int>(100 * m_course->done.load() / all);
}

} // namespace hammerline::main_window
