package pairdown.format.csv;

import pairdown.track.Channel;

/**
 * A column whose values go into a channel: {@code base = cell × factor + offset}.
 *
 * @param index which column, from 0
 * @param name its heading, for messages
 */
record ValueColumn(int index, String name, Channel channel, double factor, double offset) {
    double base(double cell) {
        return cell * factor + offset;
    }
}
