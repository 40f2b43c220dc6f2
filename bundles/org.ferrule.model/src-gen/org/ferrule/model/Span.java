/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Span</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How far a figure of one class may lie from its printed centre. A figure stated as a maximum has its centre above below that end, one stated as a minimum has its centre below above that end.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Span#getFigure <em>Figure</em>}</li>
 *   <li>{@link org.ferrule.model.Span#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.Span#getBelow <em>Below</em>}</li>
 *   <li>{@link org.ferrule.model.Span#getAbove <em>Above</em>}</li>
 *   <li>{@link org.ferrule.model.Span#isRunsLow <em>Runs Low</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSpan()
 * @model
 * @generated
 */
public interface Span extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Figure</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.FigureClass}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The class of figure that the span is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Figure</em>' attribute.
	 * @see org.ferrule.model.FigureClass
	 * @see #isSetFigure()
	 * @see #unsetFigure()
	 * @see #setFigure(FigureClass)
	 * @see org.ferrule.model.ModelPackage#getSpan_Figure()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Class of figure'"
	 * @generated
	 */
	FigureClass getFigure();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Span#getFigure <em>Figure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Figure</em>' attribute.
	 * @see org.ferrule.model.FigureClass
	 * @see #isSetFigure()
	 * @see #unsetFigure()
	 * @see #getFigure()
	 * @generated
	 */
	void setFigure(FigureClass value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Span#getFigure <em>Figure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetFigure()
	 * @see #getFigure()
	 * @see #setFigure(FigureClass)
	 * @generated
	 */
	void unsetFigure();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Span#getFigure <em>Figure</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Figure</em>' attribute is set.
	 * @see #unsetFigure()
	 * @see #getFigure()
	 * @see #setFigure(FigureClass)
	 * @generated
	 */
	boolean isSetFigure();

	/**
	 * Returns the value of the '<em><b>Kinds</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of device that the span is for; all when none is named.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kinds</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getSpan_Kinds()
	 * @model unique="false"
	 * @generated
	 */
	EList<DeviceKind> getKinds();

	/**
	 * Returns the value of the '<em><b>Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the figure may lie below its centre (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Below</em>' attribute.
	 * @see #setBelow(Dimension)
	 * @see org.ferrule.model.ModelPackage#getSpan_Below()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='CLEARANCE' label='Below the centre by'"
	 * @generated
	 */
	Dimension getBelow();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Span#getBelow <em>Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Below</em>' attribute.
	 * @see #getBelow()
	 * @generated
	 */
	void setBelow(Dimension value);

	/**
	 * Returns the value of the '<em><b>Above</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the figure may lie above its centre (mm or in); may differ from below, as where stated profiles are biased low.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Above</em>' attribute.
	 * @see #setAbove(Dimension)
	 * @see org.ferrule.model.ModelPackage#getSpan_Above()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='CLEARANCE' label='Above the centre by'"
	 * @generated
	 */
	Dimension getAbove();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Span#getAbove <em>Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Above</em>' attribute.
	 * @see #getAbove()
	 * @generated
	 */
	void setAbove(Dimension value);

	/**
	 * Returns the value of the '<em><b>Runs Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether stated figures of this class are known to run low, so that what lies above the centre is more than scatter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Runs Low</em>' attribute.
	 * @see #setRunsLow(boolean)
	 * @see org.ferrule.model.ModelPackage#getSpan_RunsLow()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Stated figures run low'"
	 * @generated
	 */
	boolean isRunsLow();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Span#isRunsLow <em>Runs Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Runs Low</em>' attribute.
	 * @see #isRunsLow()
	 * @generated
	 */
	void setRunsLow(boolean value);

} // Span
