#pragma once

namespace chalk::app {

/// While it lives, SIGINT, SIGTERM and SIGHUP do not end the program but ask it to stop, so that long work can clean up after itself.
/// One at a time.
class StopRequest {
public:
    StopRequest();
    ~StopRequest();
    StopRequest(const StopRequest&) = delete;
    StopRequest& operator=(const StopRequest&) = delete;

    [[nodiscard]] static bool isMade();
};

}  // namespace chalk::app
