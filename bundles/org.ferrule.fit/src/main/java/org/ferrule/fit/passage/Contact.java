/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.quantity.Length;

/**
 * Where a stretch of a device lies in a stretch of a lumen.
 *
 * @param lumen the stretch of the lumen
 * @param device the stretch of the device
 * @param lumenStation from the end of the lumen that is entered
 * @param deviceStation from the end of the device that leads
 * @param lumenFigure inner diameter there
 * @param deviceFigure diameter that the device needs there, with its own wire and with what lies beside it
 * @param beside what lies still beside it there
 * @param isProved whether the figures are exact, and not only upper bounds of what is needed
 */
public record Contact(Stretch lumen, Stretch device, Length lumenStation, Length deviceStation,
        Figure lumenFigure, Figure deviceFigure, List<Neighbour> beside, boolean isProved) {

    /** A contact where nothing else lies in the lumen. */
    Contact(Stretch lumen, Stretch device, Length lumenStation, Length deviceStation, Figure lumenFigure,
            Figure deviceFigure) {
        this(lumen, device, lumenStation, deviceStation, lumenFigure, deviceFigure, List.of(),
                lumen.proved() && device.proved());
    }

    /** The clearance there. */
    public Clearance clearance() {
        return Clearance.between(lumenFigure, deviceFigure);
    }

    /** How far the leading end has come when this contact is made, from the end of the lumen that is entered. */
    public Length travel() {
        return lumenStation.plus(deviceStation);
    }
}
