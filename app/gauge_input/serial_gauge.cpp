#include "gauge_input/serial_gauge.h"

namespace hammerline::gauge_input {

namespace {

// A hand needs longer than this from plugging in to pressing the gauge's button: what comes sooner is the tail of a
// line that began before we listened ("175 mm" of "3.175 mm") and must not be taken for a reading.
constexpr qint64 tailMilliseconds = 20;
constexpr int retryMilliseconds = 400;

} // namespace

SerialGauge::SerialGauge(QObject *parent) : QObject(parent)
{
    m_retry.setInterval(retryMilliseconds);
    connect(&m_retry, &QTimer::timeout, this, &SerialGauge::tryToOpen);
    connect(&m_port, &QSerialPort::readyRead, this, &SerialGauge::takeBytes);
    // Queued: closing a port inside its own error signal makes it report the same error for ever.
    connect(&m_port, &QSerialPort::errorOccurred, this, &SerialGauge::handleError, Qt::QueuedConnection);
}

void SerialGauge::listen(const LineSettings &settings)
{
    stop();
    m_port.setPortName(settings.device);
    m_port.setBaudRate(settings.baud);
    m_port.setDataBits(settings.dataBits);
    m_port.setParity(settings.parity);
    m_port.setStopBits(settings.stopBits);
    m_retry.start();
    tryToOpen();
}

void SerialGauge::stop()
{
    m_retry.stop();
    m_port.close();
    m_joiner.cut();
    m_trouble.clear();
    setLink(Link::Off);
}

void SerialGauge::tryToOpen()
{
    if (m_port.isOpen())
        return;
    if (!m_port.open(QIODevice::ReadOnly)) {
        m_trouble = m_port.errorString();
        setLink(Link::Lost);
        return;
    }
    m_port.clear(QSerialPort::Input);
    m_joiner.cut();
    m_trouble.clear();
    m_firstBytes = true;
    m_sinceOpened.start();
    setLink(Link::Listening);
}

void SerialGauge::takeBytes()
{
    if (m_firstBytes && m_sinceOpened.elapsed() < tailMilliseconds)
        m_joiner.distrustNextLine();
    m_firstBytes = false;
    for (const QByteArray &line : m_joiner.take(m_port.readAll()))
        takeLine(line);
}

void SerialGauge::takeLine(const QByteArray &line)
{
    emit lineArrived(line);
    const auto reading = readGaugeLine(line, m_pattern, m_form);
    if (reading)
        emit readingArrived(reading.value());
    else
        emit lineRefused(QString::fromStdString(reading.fault().problem));
}

void SerialGauge::handleError(QSerialPort::SerialPortError error)
{
    const bool gone = error == QSerialPort::ResourceError || error == QSerialPort::ReadError ||
                      error == QSerialPort::DeviceNotFoundError || error == QSerialPort::PermissionError;
    if (gone && m_port.isOpen())
        lose();
}

void SerialGauge::lose()
{
    takeBytes(); // whole lines that came before the cable went are readings still
    m_port.close();
    m_joiner.cut();
    m_trouble = tr("The gauge is unplugged. It is taken up again as soon as it is back.");
    setLink(Link::Lost);
}

void SerialGauge::setLink(Link link)
{
    if (link == m_link)
        return;
    m_link = link;
    emit linkChanged(link);
}

} // namespace hammerline::gauge_input
