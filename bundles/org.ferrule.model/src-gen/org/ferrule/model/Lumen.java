/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lumen</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An inner passage. Its openings are stations from the distal tip, its sections are stations from its proximal entry.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Lumen#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.Lumen#getUse <em>Use</em>}</li>
 *   <li>{@link org.ferrule.model.Lumen#getDistalAt <em>Distal At</em>}</li>
 *   <li>{@link org.ferrule.model.Lumen#getProximalAt <em>Proximal At</em>}</li>
 *   <li>{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}</li>
 *   <li>{@link org.ferrule.model.Lumen#getSections <em>Sections</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getLumen()
 * @model
 * @generated
 */
public interface Lumen extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the lumen; unique in its device. A device's lumen refines the line's lumen of the same name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getLumen_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Lumen#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The default value is <code>"working"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.LumenUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the lumen is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.LumenUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #setUse(LumenUse)
	 * @see org.ferrule.model.ModelPackage#getLumen_Use()
	 * @model default="working" unsettable="true"
	 * @generated
	 */
	LumenUse getUse();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Lumen#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see org.ferrule.model.LumenUse
	 * @see #isSetUse()
	 * @see #unsetUse()
	 * @see #getUse()
	 * @generated
	 */
	void setUse(LumenUse value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Lumen#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetUse()
	 * @see #getUse()
	 * @see #setUse(LumenUse)
	 * @generated
	 */
	void unsetUse();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Lumen#getUse <em>Use</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Use</em>' attribute is set.
	 * @see #unsetUse()
	 * @see #getUse()
	 * @see #setUse(LumenUse)
	 * @generated
	 */
	boolean isSetUse();

	/**
	 * Returns the value of the '<em><b>Distal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its distal opening from the distal tip; the tip itself when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distal At</em>' attribute.
	 * @see #setDistalAt(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumen_DistalAt()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='Station of the distal opening'"
	 * @generated
	 */
	Dimension getDistalAt();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Lumen#getDistalAt <em>Distal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distal At</em>' attribute.
	 * @see #getDistalAt()
	 * @generated
	 */
	void setDistalAt(Dimension value);

	/**
	 * Returns the value of the '<em><b>Proximal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its proximal opening from the distal tip; the effective length when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Proximal At</em>' attribute.
	 * @see #setProximalAt(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLumen_ProximalAt()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='Station of the proximal opening'"
	 * @generated
	 */
	Dimension getProximalAt();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Lumen#getProximalAt <em>Proximal At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Proximal At</em>' attribute.
	 * @see #getProximalAt()
	 * @generated
	 */
	void setProximalAt(Dimension value);

	/**
	 * Returns the value of the '<em><b>Opens</b></em>' attribute.
	 * The default value is <code>"hub"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.LumenOpening}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it opens proximally. A side port is a rapid-exchange port: proximal to it the device is its shaft and its own wire side by side. A collar is the proximal edge of an extension's tube.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opens</em>' attribute.
	 * @see org.ferrule.model.LumenOpening
	 * @see #isSetOpens()
	 * @see #unsetOpens()
	 * @see #setOpens(LumenOpening)
	 * @see org.ferrule.model.ModelPackage#getLumen_Opens()
	 * @model default="hub" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Opens proximally at'"
	 * @generated
	 */
	LumenOpening getOpens();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opens</em>' attribute.
	 * @see org.ferrule.model.LumenOpening
	 * @see #isSetOpens()
	 * @see #unsetOpens()
	 * @see #getOpens()
	 * @generated
	 */
	void setOpens(LumenOpening value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetOpens()
	 * @see #getOpens()
	 * @see #setOpens(LumenOpening)
	 * @generated
	 */
	void unsetOpens();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Opens</em>' attribute is set.
	 * @see #unsetOpens()
	 * @see #getOpens()
	 * @see #setOpens(LumenOpening)
	 * @generated
	 */
	boolean isSetOpens();

	/**
	 * Returns the value of the '<em><b>Sections</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.LumenSection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The stretches of the lumen from its proximal entry on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sections</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getLumen_Sections()
	 * @model containment="true"
	 * @generated
	 */
	EList<LumenSection> getSections();

} // Lumen
