/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.PathData;
import org.eclipse.swt.graphics.Region;
import org.ferrule.picture.Point;
import org.ferrule.picture.Segment;

/** Makes paths and regions of the toolkit, which the caller disposes of. */
final class ScreenPath {

    private static final float FLATNESS = 0.2f;

    private ScreenPath() {
    }

    /** Returns the path of an outline that is in the coordinates of the screen. */
    static Path of(Device device, org.ferrule.picture.Path outline) {
        Path path = new Path(device);
        outline.segments().forEach(segment -> add(segment, path));
        return path;
    }

    private static void add(Segment segment, Path path) {
        if (segment instanceof Segment.MoveTo move) {
            path.moveTo(x(move.to()), y(move.to()));
        } else if (segment instanceof Segment.LineTo line) {
            path.lineTo(x(line.to()), y(line.to()));
        } else if (segment instanceof Segment.CurveTo curve) {
            path.cubicTo(x(curve.control1()), y(curve.control1()), x(curve.control2()), y(curve.control2()),
                    x(curve.to()), y(curve.to()));
        } else {
            path.close();
        }
    }

    private static float x(Point point) {
        return (float) point.xMm();
    }

    private static float y(Point point) {
        return (float) point.yMm();
    }

    /** Returns the pixels inside a path, by the even-odd rule. */
    static Region region(Device device, Path path) {
        Region region = new Region(device);
        for (int[] part : parts(device, path)) {
            addOrCutOut(device, region, part);
        }
        return region;
    }

    private static void addOrCutOut(Device device, Region region, int[] part) {
        Region common = new Region(device);
        common.add(part);
        common.intersect(region);
        region.add(part);
        region.subtract(common);
        common.dispose();
    }

    private static List<int[]> parts(Device device, Path path) {
        Path flat = new Path(device, path, FLATNESS);
        PathData data = flat.getPathData();
        flat.dispose();
        List<List<Integer>> parts = new ArrayList<>();
        int at = 0;
        for (byte type : data.types) {
            if (type == SWT.PATH_MOVE_TO) {
                parts.add(new ArrayList<>());
            }
            if (type != SWT.PATH_CLOSE) {
                parts.get(parts.size() - 1).add(Math.round(data.points[at]));
                parts.get(parts.size() - 1).add(Math.round(data.points[at + 1]));
                at += 2;
            }
        }
        return parts.stream().map(part -> part.stream().mapToInt(Integer::intValue).toArray()).toList();
    }
}
