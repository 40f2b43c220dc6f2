/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An explicit statement of the maker's instructions. It holds only for the partners, the wire and the solitude that it states.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Claim#getType <em>Type</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getValue <em>Value</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getSizes <em>Sizes</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}</li>
 *   <li>{@link org.ferrule.model.Claim#getCovers <em>Covers</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getClaim()
 * @model
 * @generated
 */
public interface Claim extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.ClaimType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.ClaimType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #setType(ClaimType)
	 * @see org.ferrule.model.ModelPackage#getClaim_Type()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	ClaimType getType();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Claim#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see org.ferrule.model.ClaimType
	 * @see #isSetType()
	 * @see #unsetType()
	 * @see #getType()
	 * @generated
	 */
	void setType(ClaimType value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Claim#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetType()
	 * @see #getType()
	 * @see #setType(ClaimType)
	 * @generated
	 */
	void unsetType();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Claim#getType <em>Type</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Type</em>' attribute is set.
	 * @see #unsetType()
	 * @see #getType()
	 * @see #setType(ClaimType)
	 * @generated
	 */
	boolean isSetType();

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The stated limit: the smallest lumen of the partner, or the largest device that it takes (in, mm or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Dimension)
	 * @see org.ferrule.model.ModelPackage#getClaim_Value()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='INNER_DIAMETER' label='Stated limit'"
	 * @generated
	 */
	Dimension getValue();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Claim#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Dimension value);

	/**
	 * Returns the value of the '<em><b>Kinds</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of partner that it speaks of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kinds</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getClaim_Kinds()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Kinds of partner'"
	 * @generated
	 */
	EList<DeviceKind> getKinds();

	/**
	 * Returns the value of the '<em><b>Sizes</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The size designations of the partners that it speaks of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sizes</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getClaim_Sizes()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Sizes of partner'"
	 * @generated
	 */
	EList<String> getSizes();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The ids of the partners that it speaks of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getClaim_Devices()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Partners'"
	 * @generated
	 */
	EList<String> getDevices();

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest wire that it speaks of (in or mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(Dimension)
	 * @see org.ferrule.model.ModelPackage#getClaim_Wire()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='WIRE_DIAMETER' label='With a wire up to'"
	 * @generated
	 */
	Dimension getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Claim#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(Dimension value);

	/**
	 * Returns the value of the '<em><b>Alone</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it speaks of the device alone in the lumen, as it does when nothing is said; false when it speaks of the device beside others.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Alone</em>' attribute.
	 * @see #isSetAlone()
	 * @see #unsetAlone()
	 * @see #setAlone(boolean)
	 * @see org.ferrule.model.ModelPackage#getClaim_Alone()
	 * @model default="true" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Alone in the lumen'"
	 * @generated
	 */
	boolean isAlone();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alone</em>' attribute.
	 * @see #isSetAlone()
	 * @see #unsetAlone()
	 * @see #isAlone()
	 * @generated
	 */
	void setAlone(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetAlone()
	 * @see #isAlone()
	 * @see #setAlone(boolean)
	 * @generated
	 */
	void unsetAlone();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Alone</em>' attribute is set.
	 * @see #unsetAlone()
	 * @see #isAlone()
	 * @see #setAlone(boolean)
	 * @generated
	 */
	boolean isSetAlone();

	/**
	 * Returns the value of the '<em><b>Covers</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.Phase}.
	 * The literals are from the enumeration {@link org.ferrule.model.Phase}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it speaks of the way in, the way out or both; the way in when nothing is said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Covers</em>' attribute list.
	 * @see org.ferrule.model.Phase
	 * @see org.ferrule.model.ModelPackage#getClaim_Covers()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Covers the way'"
	 * @generated
	 */
	EList<Phase> getCovers();

} // Claim
