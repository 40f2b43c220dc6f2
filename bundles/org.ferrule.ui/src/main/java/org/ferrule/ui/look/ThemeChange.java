/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.util.function.Supplier;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

/** Lets those follow the theme who keep a colour, and do not ask for it whenever they paint. */
public final class ThemeChange {

    /** Where the platform's style sheets look whether to leave a control alone. */
    private static final String UNSTYLED = "org.eclipse.e4.ui.css.disabled";

    private final IEventBroker broker = PlatformUI.getWorkbench().getService(IEventBroker.class);
    private final EventHandler ofTheme = event -> later();
    private final Listener ofSystem = event -> later();
    private final Control control;
    private final Display display;
    private final Runnable colouring;
    private boolean awaited;

    private ThemeChange(Control control, Runnable colouring) {
        this.control = control;
        this.colouring = colouring;
        display = control.getDisplay();
    }

    /**
     * Gives a control its colours now, and again whenever the theme or the system's colours are others. The theme's style
     * sheet gives it none.
     */
    public static void follow(Control control, Runnable colouring) {
        control.setData(UNSTYLED, Boolean.TRUE);
        colouring.run();
        new ThemeChange(control, colouring).connect();
    }

    /** Gives a label or a link a colour of its own, which the theme would take from it, on the ground of what holds it. */
    public static void text(Control control, Supplier<Color> colour) {
        follow(control, () -> {
            control.setBackground(control.getParent().getBackground());
            control.setForeground(colour.get());
        });
        ground(control);
    }

    /**
     * Gives a control the ground of what holds it whenever that has got another, since the theme's style sheet reaches
     * what holds and what is held in no certain order.
     */
    public static void ground(Control control) {
        control.addListener(SWT.Paint, event -> event.display.asyncExec(() -> {
            if (!control.isDisposed() && !control.getParent().getBackground().equals(control.getBackground())) {
                control.setBackground(control.getParent().getBackground());
            }
        }));
    }

    @SuppressWarnings("restriction")
    private void connect() {
        broker.subscribe(IThemeEngine.Events.THEME_CHANGED, null, ofTheme, true);
        display.addListener(SWT.Settings, ofSystem);
        later();
        control.addDisposeListener(event -> {
            broker.unsubscribe(ofTheme);
            display.removeListener(SWT.Settings, ofSystem);
        });
    }

    /** Once for many colours, and after the style sheet has given what is around its own. */
    private void later() {
        if (!awaited) {
            awaited = true;
            display.asyncExec(this::colour);
        }
    }

    private void colour() {
        awaited = false;
        if (!control.isDisposed()) {
            colouring.run();
        }
    }
}
