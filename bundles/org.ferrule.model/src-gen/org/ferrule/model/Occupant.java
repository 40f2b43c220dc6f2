/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Offset;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Occupant</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A device that lies still in the outer device while another one passes.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Occupant#getDevice <em>Device</em>}</li>
 *   <li>{@link org.ferrule.model.Occupant#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.Occupant#getTipAhead <em>Tip Ahead</em>}</li>
 *   <li>{@link org.ferrule.model.Occupant#isUsed <em>Used</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getOccupant()
 * @model
 * @generated
 */
public interface Occupant extends Element
{
	/**
	 * Returns the value of the '<em><b>Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Device</em>' attribute.
	 * @see #setDevice(String)
	 * @see org.ferrule.model.ModelPackage#getOccupant_Device()
	 * @model required="true"
	 * @generated
	 */
	String getDevice();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Occupant#getDevice <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Device</em>' attribute.
	 * @see #getDevice()
	 * @generated
	 */
	void setDevice(String value);

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the wire that it runs over; the largest that it is stated to take when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(String)
	 * @see org.ferrule.model.ModelPackage#getOccupant_Wire()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Over the wire'"
	 * @generated
	 */
	String getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Occupant#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(String value);

	/**
	 * Returns the value of the '<em><b>Tip Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far its tip lies beyond the outer device's distal end; negative when it lies inside, at the end itself when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tip Ahead</em>' attribute.
	 * @see #setTipAhead(Offset)
	 * @see org.ferrule.model.ModelPackage#getOccupant_TipAhead()
	 * @model dataType="org.ferrule.model.Offset"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Tip beyond the outer device by'"
	 * @generated
	 */
	Offset getTipAhead();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Occupant#getTipAhead <em>Tip Ahead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tip Ahead</em>' attribute.
	 * @see #getTipAhead()
	 * @generated
	 */
	void setTipAhead(Offset value);

	/**
	 * Returns the value of the '<em><b>Used</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it was used before and has its outline after use, as a re-wrapped balloon.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Used</em>' attribute.
	 * @see #setUsed(boolean)
	 * @see org.ferrule.model.ModelPackage#getOccupant_Used()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Used before'"
	 * @generated
	 */
	boolean isUsed();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Occupant#isUsed <em>Used</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Used</em>' attribute.
	 * @see #isUsed()
	 * @generated
	 */
	void setUsed(boolean value);

} // Occupant
