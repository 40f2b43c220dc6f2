/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Conditions</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The conditions under which the inner devices pass.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getConditions()
 * @model
 * @generated
 */
public interface Conditions extends Element
{
	/**
	 * Returns the value of the '<em><b>Direction</b></em>' attribute.
	 * The default value is <code>"tipFirst"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Direction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the device goes tip first, or is loaded over the tail of the wire in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Direction</em>' attribute.
	 * @see org.ferrule.model.Direction
	 * @see #isSetDirection()
	 * @see #unsetDirection()
	 * @see #setDirection(Direction)
	 * @see org.ferrule.model.ModelPackage#getConditions_Direction()
	 * @model default="tipFirst" unsettable="true"
	 * @generated
	 */
	Direction getDirection();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Direction</em>' attribute.
	 * @see org.ferrule.model.Direction
	 * @see #isSetDirection()
	 * @see #unsetDirection()
	 * @see #getDirection()
	 * @generated
	 */
	void setDirection(Direction value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetDirection()
	 * @see #getDirection()
	 * @see #setDirection(Direction)
	 * @generated
	 */
	void unsetDirection();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Direction</em>' attribute is set.
	 * @see #unsetDirection()
	 * @see #getDirection()
	 * @see #setDirection(Direction)
	 * @generated
	 */
	boolean isSetDirection();

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the wire in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(String)
	 * @see org.ferrule.model.ModelPackage#getConditions_Wire()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Wire in place'"
	 * @generated
	 */
	String getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(String value);

	/**
	 * Returns the value of the '<em><b>Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far beyond the outer device's distal end the inner device goes; from hub to hub when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reach</em>' attribute.
	 * @see #setReach(Dimension)
	 * @see org.ferrule.model.ModelPackage#getConditions_Reach()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH' label='Reach beyond the outer device'"
	 * @generated
	 */
	Dimension getReach();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reach</em>' attribute.
	 * @see #getReach()
	 * @generated
	 */
	void setReach(Dimension value);

} // Conditions
