/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Device Parts</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a line shares and a device states. A device inherits from its line what it does not state itself.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.DeviceParts#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getMaker <em>Maker</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getModel <em>Model</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getSize <em>Size</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getEffectiveLength <em>Effective Length</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getTakesWire <em>Takes Wire</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getSections <em>Sections</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getLumens <em>Lumens</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getMarkers <em>Markers</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getBalloon <em>Balloon</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getStent <em>Stent</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getCutter <em>Cutter</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getTransducer <em>Transducer</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceParts#getClaims <em>Claims</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getDeviceParts()
 * @model abstract="true"
 * @generated
 */
public interface DeviceParts extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which other elements refer to it; unique in its document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name that people read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The default value is <code>"other"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kind, for grouping and naming; what the device can do follows from its parts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.ferrule.model.DeviceKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #setKind(DeviceKind)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Kind()
	 * @model default="other" unsettable="true"
	 * @generated
	 */
	DeviceKind getKind();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.ferrule.model.DeviceKind
	 * @see #isSetKind()
	 * @see #unsetKind()
	 * @see #getKind()
	 * @generated
	 */
	void setKind(DeviceKind value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetKind()
	 * @see #getKind()
	 * @see #setKind(DeviceKind)
	 * @generated
	 */
	void unsetKind();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Kind</em>' attribute is set.
	 * @see #unsetKind()
	 * @see #getKind()
	 * @see #setKind(DeviceKind)
	 * @generated
	 */
	boolean isSetKind();

	/**
	 * Returns the value of the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who makes it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Maker</em>' attribute.
	 * @see #setMaker(String)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Maker()
	 * @model
	 * @generated
	 */
	String getMaker();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getMaker <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maker</em>' attribute.
	 * @see #getMaker()
	 * @generated
	 */
	void setMaker(String value);

	/**
	 * Returns the value of the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The maker's catalogue code.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Model</em>' attribute.
	 * @see #setModel(String)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Model()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Catalogue code'"
	 * @generated
	 */
	String getModel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getModel <em>Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Model</em>' attribute.
	 * @see #getModel()
	 * @generated
	 */
	void setModel(String value);

	/**
	 * Returns the value of the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The size designation, such as 6 Fr: a name, never converted to a diameter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size</em>' attribute.
	 * @see #setSize(String)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Size()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Size designation'"
	 * @generated
	 */
	String getSize();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size</em>' attribute.
	 * @see #getSize()
	 * @generated
	 */
	void setSize(String value);

	/**
	 * Returns the value of the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The effective length, from the distal tip to the hub or strain relief (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Effective Length</em>' attribute.
	 * @see #setEffectiveLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_EffectiveLength()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getEffectiveLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getEffectiveLength <em>Effective Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Effective Length</em>' attribute.
	 * @see #getEffectiveLength()
	 * @generated
	 */
	void setEffectiveLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest wire that the maker states for it: a claim about the diameter (in or mm), not the diameter of a lumen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Takes Wire</em>' attribute.
	 * @see #setTakesWire(Dimension)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_TakesWire()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='WIRE_DIAMETER' label='Takes a wire up to'"
	 * @generated
	 */
	Dimension getTakesWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getTakesWire <em>Takes Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Takes Wire</em>' attribute.
	 * @see #getTakesWire()
	 * @generated
	 */
	void setTakesWire(Dimension value);

	/**
	 * Returns the value of the '<em><b>Sections</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ShaftSection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The sections of the shaft, of a wire too, from the distal tip to the hub.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sections</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Sections()
	 * @model containment="true"
	 * @generated
	 */
	EList<ShaftSection> getSections();

	/**
	 * Returns the value of the '<em><b>Lumens</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Lumen}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The inner passages.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lumens</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Lumens()
	 * @model containment="true"
	 * @generated
	 */
	EList<Lumen> getLumens();

	/**
	 * Returns the value of the '<em><b>Markers</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Marker}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The radiopaque markers.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Markers</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Markers()
	 * @model containment="true"
	 * @generated
	 */
	EList<Marker> getMarkers();

	/**
	 * Returns the value of the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The balloon, if it has one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Balloon</em>' containment reference.
	 * @see #setBalloon(Balloon)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Balloon()
	 * @model containment="true"
	 * @generated
	 */
	Balloon getBalloon();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getBalloon <em>Balloon</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Balloon</em>' containment reference.
	 * @see #getBalloon()
	 * @generated
	 */
	void setBalloon(Balloon value);

	/**
	 * Returns the value of the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The stent that it carries, if any.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stent</em>' containment reference.
	 * @see #setStent(Stent)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Stent()
	 * @model containment="true"
	 * @generated
	 */
	Stent getStent();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getStent <em>Stent</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stent</em>' containment reference.
	 * @see #getStent()
	 * @generated
	 */
	void setStent(Stent value);

	/**
	 * Returns the value of the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The part that removes or cuts plaque, if it has one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cutter</em>' containment reference.
	 * @see #setCutter(Cutter)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Cutter()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Cutter'"
	 * @generated
	 */
	Cutter getCutter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getCutter <em>Cutter</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cutter</em>' containment reference.
	 * @see #getCutter()
	 * @generated
	 */
	void setCutter(Cutter value);

	/**
	 * Returns the value of the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The imaging transducer, if it has one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Transducer</em>' containment reference.
	 * @see #setTransducer(Transducer)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Transducer()
	 * @model containment="true"
	 * @generated
	 */
	Transducer getTransducer();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getTransducer <em>Transducer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transducer</em>' containment reference.
	 * @see #getTransducer()
	 * @generated
	 */
	void setTransducer(Transducer value);

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What matters of a guidewire beyond its sections.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' containment reference.
	 * @see #setWire(WireTraits)
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Wire()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Wire traits'"
	 * @generated
	 */
	WireTraits getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.DeviceParts#getWire <em>Wire</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' containment reference.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(WireTraits value);

	/**
	 * Returns the value of the '<em><b>Claims</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Claim}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the maker's instructions say explicitly about partners.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Claims</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceParts_Claims()
	 * @model containment="true"
	 * @generated
	 */
	EList<Claim> getClaims();

} // DeviceParts
