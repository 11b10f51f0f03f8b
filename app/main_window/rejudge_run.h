#pragma once
// One judging of the whole shop on threads of its own, with connections of its own: whoever waits asks now and then.

#include "shop/judge_shop.h"

#include <future>
#include <memory>
#include <optional>
#include <string>

namespace hammerline::main_window {

class RejudgeRun {
public:
    RejudgeRun() = default;
    RejudgeRun(const RejudgeRun &) = delete;
    RejudgeRun &operator=(const RejudgeRun &) = delete;
    ~RejudgeRun() { stop(); }

    /// One that is under way is stopped first.
    void begin(const std::string &path, shop::Asked asked);
    /// Waits until its threads are done, no longer than an instrument takes.
    void stop();
    [[nodiscard]] bool isRunning() const { return m_result.valid(); }
    /// Present once it is done; then it is running no more. Throws what broke it.
    [[nodiscard]] std::optional<shop::ShopJudged> take();
    [[nodiscard]] int percent() const;

private:
    std::unique_ptr<shop::Course> m_course{};
    std::future<std::optional<shop::ShopJudged>> m_result{};
};

} // namespace hammerline::main_window
